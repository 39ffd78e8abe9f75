import { ordersPlaced } from "../../../core/edit/store/ordersPlaced.ts";
import { withoutOrderLimits } from "../../../core/edit/store/withDepotPacks.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import { dayNow } from "../../state/dayNow.ts";
import type { State } from "../../state/store.ts";
import { type EntryField, entryField } from "../store/entryField.ts";
import { orderLines } from "./orderLines.ts";
import { takenOrder } from "./takenOrder.ts";

/** Writes down that what the sheet asks for was ordered: the packs stand there already, and one act enters them all. */
export function placeOrderPart({ store }: Surroundings): SheetPart {
	const day = entryField("ordered-on", say`Ordered on`, el("input", { type: "date" }));
	const packs = el("div", { class: "order-packs" });
	const said = el("p", { class: "entry-said", role: "status" });
	const form = el(
		"form",
		{ class: "store-entry", "aria-label": say`Write down what was ordered`, novalidate: true },
		day.element,
		packs,
		el("button", { type: "submit", class: "main" }, say`These are ordered`),
	);
	const part = el(
		"details",
		{ class: "store-entry-part" },
		el("summary", {}, say`Write down what was ordered`),
		el(
			"p",
			{},
			say`From then on they count as on the way, until they are received or given up under Orders placed.`,
		),
		form,
	);
	let fields: readonly Packs[] = [];
	let saidOf: Workbook | undefined;
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const items = fields.map(({ item, field }) => ({ item, packs: field.control.value }));
		const on = day.control.value;
		const result = ordersPlaced(store.state.workbook, on, items);
		showWrong(day, fields, result.ok ? [] : result.wrong);
		if (!result.ok) return;
		saidOf = withoutOrderLimits(result.workbook);
		store.edit(saidOf);
		const words = say`${counted(result.orders, "order")} written down, placed on ${shownDay(on)}.`;
		said.textContent =
			saidOf === result.workbook
				? words
				: say`${words} The money and the depot’s packs were for it, and are blank again.`;
	});
	return {
		element: el("div", {}, part, said),
		paint(state) {
			if (state.workbook !== saidOf) said.textContent = "";
			if (day.control.value === "") day.control.value = dayNow(state);
			const wanted = wantedPacks(state);
			if (!isSame(fields, wanted)) {
				fields = wanted;
				fill(packs, ...fields.map(({ field }) => field.element));
			}
			part.hidden = fields.length === 0;
		},
	};
}

interface Packs {
	readonly item: string;
	/** As the sheet asks for; what the field holds may differ. */
	readonly asked: number;
	readonly field: EntryField<HTMLInputElement>;
}

function wantedPacks(state: State): Packs[] {
	const taken = new Map(takenOrder(state)?.lines.map((line) => [line.item, line.taken]));
	return orderLines(state).flatMap(({ item, packs: ordered }, at) => {
		if (!ordered) return [];
		// What the money does not pay for is not proposed, but can be typed.
		const packs = taken.get(item) ?? ordered;
		const input = el("input", {
			type: "text",
			inputmode: "numeric",
			autocomplete: "off",
			value: packs,
		});
		const unit = el("span", { class: "unit" }, " ", say`packs`);
		return [{ item, asked: packs, field: entryField(`order-${at}`, item, input, unit) }];
	});
}

/** What is begun in the fields stays while the order asks for the same. */
function isSame(shown: readonly Packs[], wanted: readonly Packs[]): boolean {
	return (
		shown.length === wanted.length &&
		shown.every(({ item, asked }, i) => item === wanted[i]?.item && asked === wanted[i].asked)
	);
}

function showWrong(
	day: EntryField,
	fields: readonly Packs[],
	wrong: readonly { readonly item?: string; readonly words: string }[],
): void {
	day.wrong(wrong.find(({ item }) => item === undefined)?.words);
	for (const { item, field } of fields)
		field.wrong(wrong.find((each) => each.item === item)?.words);
	[day, ...fields.map(({ field }) => field)]
		.find(({ control }) => control.hasAttribute("aria-invalid"))
		?.control.focus();
}
