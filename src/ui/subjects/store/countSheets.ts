import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { itemNames, measureOf } from "../../../core/edit/store/storeEntry.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { stockSheet } from "../../../core/sheets/stock.ts";
import { el } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownDateAndYear, shownDayAndYear } from "../../format/shownDay.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { type PaperColumn, paperTable } from "../../print/paperTable.ts";
import { signatures } from "../../print/signatures.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { storeCautions } from "./storeCautions.ts";

/** Lines for lots that are on the shelf and not in the books. */
const SPARE_ROWS = 4;

/** Sheets to count the store with: blind, as auditors like it, or with what the books say. */
export const countSheets: readonly PrintOut[] = [
	{ name: say`Print a count sheet`, pages: (state) => [countPage(state, false)] },
	{ name: say`Print one with what the books say`, pages: (state) => [countPage(state, true)] },
];

function countPage(state: State, withBooks: boolean): HTMLElement {
	const { items } = storeBooks(state.workbook);
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const stock = rowsOf(state.plan, stockSheet);
	const names = new Set([...itemNames(state.workbook), ...stock.map((row) => wordIn(row.item))]);
	const rows = [...names].flatMap((item) => {
		const lots = stock.filter((row) => wordIn(row.item) === item);
		const named = () =>
			el(
				"span",
				{},
				item,
				el("span", { class: "unit" }, " ", say`in ${shownWord(measureOf(items, item))}`),
			);
		if (lots.length === 0) return [[named(), say`none in the books`]];
		return lots.map((row) => [
			named(),
			wordIn(row.lot),
			shownDateAndYear(wordIn(row.usable_until)),
			...(withBooks ? [amountOf(numberIn(row.on_hand) ?? 0, "")] : []),
		]);
	});
	const books: readonly PaperColumn[] = withBooks ? [{ label: say`Books say`, numeric: true }] : [];
	const spare = Array.from({ length: SPARE_ROWS }, () => [""]);
	return paperForm(
		state,
		"count-sheet",
		{
			title: say`Stock count`,
			when: say`Plan from ${shownDayAndYear(firstDay)}; counted on: ______________`,
			cautions: storeCautions,
			end: signatures(
				say`Counted by, date`,
				say`Checked by, date`,
				say`Entered in the books by, date`,
			),
		},
		paperTable(
			say`What is on the shelf, lot by lot`,
			[
				{ label: say`Item` },
				{ label: say`Lot` },
				{ label: say`Usable until` },
				...books,
				{ label: say`Counted`, blank: true },
				{ label: say`By whom`, blank: true },
				{ label: say`Remark`, blank: true },
			],
			[{ rows }, { heading: say`On the shelf and not in the books`, rows: spare }],
		),
	);
}
