import { entered } from "../../../core/edit/store/entered.ts";
import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { itemNames, measureOf, type WrongField } from "../../../core/edit/store/storeEntry.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import { dayNow } from "../../state/dayNow.ts";
import type { State } from "../../state/store.ts";
import { doneWords, wrongWords } from "./enteredWords.ts";
import { offer } from "./entryField.ts";
import { lotEntriesIn } from "./lotEntriesIn.ts";
import { NEW_LOT, type StoreEntryForm, storeEntryForm } from "./storeEntryForm.ts";

/** Where a person enters what was counted, received, issued or lost; what is begun in it stays while the sheet is painted. */
export function storeEntryPart({ store }: Surroundings): SheetPart {
	const made = storeEntryForm();
	const said = el("p", { class: "entry-said", role: "status" });
	let saidOf: Workbook | undefined;
	made.form.addEventListener("change", () => offerLots(made, store.state));
	made.form.addEventListener("submit", (event) => {
		event.preventDefault();
		const entry = made.read();
		const result = entered(store.state.workbook, entry, lotEntriesIn(store.state));
		showWrong(made, result.ok ? [] : result.wrong);
		if (!result.ok) return;
		saidOf = result.workbook;
		store.edit(result.workbook);
		const { items } = storeBooks(result.workbook);
		said.textContent = doneWords(result.done, entry, measureOf(items, entry.item));
		clear(made);
	});
	return {
		element: el(
			"details",
			{ class: "store-entry-part", open: true },
			el("summary", {}, say`Enter a count, a receipt, an issue or a loss`),
			made.form,
			said,
		),
		paint(state) {
			// What was said of an entry that has been undone, or built upon, no longer holds.
			if (state.workbook !== saidOf) said.textContent = "";
			offer(
				made.fields.item.control,
				itemNames(state.workbook).map((name) => [name, name]),
			);
			const { day } = made.fields;
			if (day.control.value === "") day.control.value = dayNow(state);
			day.spell();
			offerLots(made, state);
		},
	};
}

/** Lots of the item that is chosen; what only a new lot has is asked for only then. */
function offerLots({ fields, measure, kind, isNew }: StoreEntryForm, { workbook }: State): void {
	const books = storeBooks(workbook);
	const item = fields.item.control.value;
	const lots = books.lots.rows
		.filter(({ value }) => value.item === item)
		.map(({ value }) => [value.lot, value.lot] as const);
	const fresh =
		kind() === "receipt" ? [[NEW_LOT, say`A lot that is not in the list`] as const] : [];
	offer(fields.lot.control, [...lots, ...fresh]);
	for (const field of [fields.newLot, fields.made, fields.expires]) field.element.hidden = !isNew();
	measure.textContent = shownWord(measureOf(books.items, item));
}

function showWrong(made: StoreEntryForm, wrong: readonly WrongField[]): void {
	const { fields, isNew } = made;
	const entry = made.read();
	const wordsOf = (name: WrongField["field"]) => {
		const found = wrong.find(({ field }) => field === name);
		return found && wrongWords(found, entry);
	};
	for (const name of ["item", "made", "expires", "day", "quantity", "note"] as const)
		fields[name].wrong(wordsOf(name));
	fields.lot.wrong(isNew() ? undefined : wordsOf("lot"));
	fields.newLot.wrong(isNew() ? wordsOf("lot") : undefined);
	Object.values(fields)
		.find(({ control }) => control.hasAttribute("aria-invalid"))
		?.control.focus();
}

/** Ready for the next lot: day and person stay, because one person counts many lots. */
function clear({ fields }: StoreEntryForm): void {
	for (const { control, spell } of [fields.quantity, fields.newLot, fields.made, fields.expires]) {
		control.value = "";
		spell();
	}
	fields.item.control.focus();
}
