import { countsWritten } from "../../../core/edit/monday/countsWritten.ts";
import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { measureOf } from "../../../core/edit/store/storeEntry.ts";
import { isComing, lotsOnHand } from "../../../core/plan/store/lotsOnHand.ts";
import { readToday } from "../../../core/plan/today/readToday.ts";
import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { counted } from "../../format/counted.ts";
import { EXACT } from "../../format/litreWords.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay } from "../../format/shownDay.ts";
import { paperTable } from "../../print/paperTable.ts";
import { clockNow } from "../../state/clockNow.ts";
import { daysOf } from "../../state/daysOf.ts";
import type { State } from "../../state/store.ts";
import { entryField } from "../store/entryField.ts";
import { lotEntriesIn } from "../store/lotEntriesIn.ts";
import type { StepPart } from "./mondayStep.ts";
import { sayBeside } from "./sayBeside.ts";

interface Line {
	readonly item: string;
	readonly lot: string;
	readonly measure: string;
	readonly field: HTMLInputElement;
}

/** The whole store counted as one table, without what the books say; a lot that is left blank was not counted. */
export const countStep: StepPart = ({ store }, { done }) => {
	const day = entryField("monday-counted-on", say`Counted on`, el("input", { type: "date" }));
	const by = entryField("monday-counted-by", say`Counted by`, el("input", { type: "text" }));
	const place = el("div", { class: "wide" });
	const reason = el("p", { class: "reason", role: "alert", id: "monday-count-wrong" });
	const form = el(
		"form",
		{ novalidate: true },
		place,
		el("div", { class: "monday-fields" }, day.element, by.element),
		reason,
		el("button", { type: "submit", class: "main" }, say`Keep these counts`),
	);
	let lines: readonly Line[] = [];
	let shown = "";
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const counts = lines.map(({ item, lot, field }) => ({ item, lot, quantity: field.value }));
		const note = by.control.value.trim();
		const { workbook } = store.state;
		const entriesIn = lotEntriesIn(store.state);
		const written = countsWritten(workbook, day.control.value, counts, note, entriesIn);
		for (const { field } of lines) field.removeAttribute("aria-invalid");
		if (!written.ok) {
			for (const { at } of written.wrong) lines[at]?.field.setAttribute("aria-invalid", "true");
			const [first] = written.wrong;
			const line = first && lines[first.at];
			if (line) sayBeside(line.field, reason, wrongWords(line, first.field));
			else fill(reason, first && wrongWords(line, first.field));
			return;
		}
		fill(reason);
		const measures = new Map(lines.map(({ item, measure }) => [item, measure]));
		const differ = written.differences.map(({ item, lot, books, counted: found }) => {
			const amount = (quantity: number) =>
				amountOf(quantity, shownWord(measures.get(item) ?? ""), EXACT);
			return say`${item}, lot ${lot}: ${amount(found)}, books said ${amount(books)}`;
		});
		for (const { field } of lines) field.value = "";
		done(
			written.workbook,
			differ.length === 0
				? say`${counted(written.counted, "lot")} counted; all as the books say.`
				: say`${counted(written.counted, "lot")} counted. Differing: ${differ.join(semicolon)}.`,
		);
	});
	return {
		element: form,
		paint(state) {
			if (day.control.value === "") day.control.value = countingDay(state);
			day.spell();
			const lots = lotsToCount(state);
			const now = JSON.stringify(lots);
			if (now === shown) return;
			shown = now;
			lines = lots.map((lot) => ({ ...lot, field: fieldOf(lot) }));
			fill(place, table(lines));
		},
	};
};

/** Today; the day after the plan where the clock is behind it, because the store is counted when the week is over. */
function countingDay(state: State): string {
	const today = clockNow().date;
	return today < (daysOf(state)[0] ?? "") ? (daysOf(state).at(-1) ?? today) : today;
}

function lotsToCount(state: State): Omit<Line, "field">[] {
	const { items } = storeBooks(state.workbook);
	return lotsOnHand(readToday(state.workbook, state.today))
		.filter((lot) => !isComing(lot))
		.map(({ row: { value } }) => ({
			item: value.item,
			lot: value.lot,
			measure: measureOf(items, value.item),
		}));
}

function fieldOf({ item, lot }: Omit<Line, "field">): HTMLInputElement {
	return el("input", {
		type: "text",
		inputmode: "decimal",
		autocomplete: "off",
		class: "count",
		"aria-label": say`Counted: ${item}, lot ${lot}`,
	});
}

function table(lines: readonly Line[]): HTMLElement {
	return paperTable(
		say`What is on the shelf, lot by lot`,
		[{ label: say`Item` }, { label: say`Lot` }, { label: say`Counted` }, { label: say`Measure` }],
		[
			{
				rows: lines.map(({ item, lot, measure, field }) => [item, lot, field, shownWord(measure)]),
			},
		],
	);
}

function wrongWords(
	line: Line | undefined,
	field: { readonly words: string } | { readonly arrives: string },
): string {
	const words =
		"words" in field ? field.words : say`It is on the way until ${shownDay(field.arrives)}.`;
	return line ? say`${line.item}, lot ${line.lot}: ${words}` : words;
}
