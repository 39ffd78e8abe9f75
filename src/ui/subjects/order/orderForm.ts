import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { signatures } from "../../print/signatures.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { missingPieces } from "../kits/missingPieces.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { type OrderLine, orderLines } from "./orderLines.ts";
import { orderHeadline } from "./orderWords.ts";
import { shownOrder } from "./shownOrder.ts";
import { type TakenOrder, takenOrder } from "./takenOrder.ts";
import { takenParts } from "./takenParts.ts";

/** The order as a form to hand in. */
export const orderForm: PrintOut = {
	name: say`Print the order form`,
	pages: (state) => [orderPage(state)],
};

function orderPage(state: State): HTMLElement {
	const lines = orderLines(state);
	const currency = unitSetting(state, "currency") ?? "";
	const taken = takenOrder(state);
	const firstDay = unitSetting(state, "plan_start") ?? "";
	return paperForm(
		state,
		"order-form",
		{
			title: say`Order form`,
			when: say`Worked out for ${shownDayAndYear(firstDay)}`,
			cautions: storeCautions,
			end: signatures(
				say`Ordered by, date`,
				say`Approved by, date`,
				say`Received and checked by, date`,
			),
		},
		el("p", { class: "paper-answer" }, `${orderHeadline(state) ?? say`Nothing to order yet`}.`),
		shownOrder(lines, currency, true, taken),
		el("p", { class: "paper-total" }, ...total(lines, currency, taken)),
		...takenParts(state),
		piecesToFind(state),
		nothingNeeded(lines),
	);
}

/** The cost in all, and whose cost is not in it. */
function total(
	lines: readonly OrderLine[],
	currency: string,
	taken: TakenOrder | undefined,
): Child[] {
	const ordered = lines.filter((line) => (line.packs ?? 0) > 0);
	if (ordered.length === 0) return [];
	const sum = ordered.reduce((all, line) => all + (line.cost ?? 0), 0);
	const without = ordered.filter((line) => line.cost === undefined).map((line) => line.item);
	const packs = ordered.reduce((all, line) => all + (line.packs ?? 0), 0);
	const money = (amount: number) => `${shownNumber(amount, 2)} ${currency}`.trim();
	const all = say`${counted(packs, "pack")}, ${money(sum)}`;
	const had = taken?.lines.reduce((count, line) => count + (line.taken ?? 0), 0) ?? 0;
	return [
		el(
			"strong",
			{},
			taken?.isLess
				? say`In all: ${counted(had, "pack")}, ${money(taken.spent)}; needed: ${all}`
				: say`In all: ${all}`,
		),
		without.length > 0 && say`, without the price of ${without.join(", ")}`,
		".",
	];
}

function piecesToFind(state: State): HTMLElement | undefined {
	const missing = missingPieces(state);
	if (missing.length === 0) return undefined;
	const each = missing.map(({ item, amount }) => say`${item}: ${amount}`);
	return el("p", {}, el("strong", {}, say`Find or order:`), " ", `${each.join(semicolon)}.`);
}

function nothingNeeded(lines: readonly OrderLine[]): HTMLElement | undefined {
	const enough = lines.filter((line) => line.urgency === "enough");
	if (enough.length === 0) return undefined;
	const each = enough.map(({ item, orderBy }) =>
		orderBy === "" ? item : say`${item} (order by ${shownDay(orderBy)})`,
	);
	return el(
		"p",
		{ class: "paper-small" },
		el("strong", {}, say`Enough for now:`),
		" ",
		`${each.join(semicolon)}.`,
	);
}
