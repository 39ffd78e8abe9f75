import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { paperTable } from "../../print/paperTable.ts";
import { signatures } from "../../print/signatures.ts";
import { clockNow } from "../../state/clockNow.ts";
import type { State } from "../../state/store.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { type DistrictLine, isFolded, needsOf, orderHeadline } from "./districtLines.ts";
import { type DistrictState, linesOf } from "./districtState.ts";
import { orderTable } from "./orderTable.ts";

/** @param notes what must be known of the sums: other weeks, units that are lacking */
export function orderPaper(
	district: DistrictState,
	notes: readonly string[],
	withShares: boolean,
): PrintOut {
	return {
		name: say`Print the order`,
		pages: (state) => [
			orderPage(state, district, notes),
			...(withShares ? [sharesPage(state, district)] : []),
		],
	};
}

/** Whose it is, and when it was put together: the plans of the units may begin on different days. */
function headOf({ district }: DistrictState) {
	return {
		whose: say`Combined order of ${counted(district.counted, "unit")}`,
		when: say`Put together on ${shownDayAndYear(clockNow().date)}`,
	};
}

function orderPage(state: State, all: DistrictState, notes: readonly string[]): HTMLElement {
	const { district } = all;
	const lines = linesOf(all);
	const shown = lines.filter((line) => !isFolded(line));
	const left = lines.filter(isFolded).map(({ item }) => item);
	return paperForm(
		state,
		"combined-order",
		{
			way: "lying",
			...headOf(all),
			title: orderHeadline(district.counted, lines),
			cautions: storeCautions,
			end: signatures(say`Prepared by, date`, say`Checked by, date`, say`Approved by, date`),
		},
		...notes.map((words) => el("p", {}, words)),
		orderTable(say`All units together`, shown),
		el("p", { class: "paper-total" }, ...costWords(shown)),
		left.length > 0 &&
			el("p", { class: "paper-small" }, say`Nothing to order of: ${left.join(", ")}.`),
	);
}

function costWords(lines: readonly DistrictLine[]) {
	const cost = lines.reduce((sum, line) => sum + (line.cost ?? 0), 0);
	const unpriced = lines.filter((line) => (line.packs ?? 0) > 0 && line.cost === undefined);
	return [
		el("strong", {}, say`Cost in all: ${shownNumber(cost, 2)}`),
		unpriced.length > 0 &&
			say`, without the price of ${unpriced.map((line) => line.item).join(", ")}`,
		". ",
		say`Prices as the units give them.`,
	];
}

/** What each unit gets, a row a unit, on as many pages as that takes; it lies as the order before it does, or it would be cut. */
function sharesPage(state: State, all: DistrictState): HTMLElement {
	const { district, nameOf } = all;
	const title = say`What each unit needs`;
	return paperForm(
		state,
		"combined-shares",
		{ way: "lying", ...headOf(all), title, cautions: storeCautions },
		paperTable(
			title,
			[
				{ label: say`Unit` },
				{ label: say`Needed, and its own packs` },
				{ label: say`Given, by, date`, blank: true },
			],
			[
				{
					rows: district.units.map((unit) => [
						unit.row.unit,
						needWords(unit, needsOf(unit, nameOf)),
						"",
					]),
				},
			],
		),
	);
}

function needWords(
	{ row }: DistrictState["district"]["units"][number],
	needs: readonly string[],
): string {
	if (row.state === "not_read") return say`not read: ${row.in_words}`;
	return needs.length === 0 ? say`nothing` : needs.join("; ");
}
