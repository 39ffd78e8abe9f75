import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { say } from "../../../core/say.ts";
import { journalSheet } from "../../../core/sheets/journal.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { countSheets } from "./countSheets.ts";
import { storeCautions } from "./storeCautions.ts";
import { storeEntryPart } from "./storeEntryPart.ts";

/** The journal of the store. */
export const journalPage: SheetPage = {
	sheet: journalSheet,
	headline: journalHeadline,
	part: storeEntryPart,
	cautions: storeCautions,
	prints: countSheets,
};

function journalHeadline(state: State): string {
	const { journal } = storeBooks(state.workbook);
	const days = journal.rows.map(({ value }) => value.day).sort();
	const counts = journal.rows.filter(({ value }) => value.entry === "count");
	if (days.length === 0) return say`Nothing entered yet: stock is what the lots say`;
	const last = counts
		.map(({ value }) => value.day)
		.sort()
		.at(-1);
	const count = last ? say`last counted on ${shownDay(last)}` : say`no count yet`;
	return say`${counted(days.length, "entry")} up to ${shownDay(days.at(-1) ?? "")}; ${count}`;
}
