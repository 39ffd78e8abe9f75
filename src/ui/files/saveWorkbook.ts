import type { Plan } from "../../core/plan/plan.ts";
import { readSettings } from "../../core/read/readSettings.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { Workbook } from "../../core/workbook.ts";
import { computedCsv } from "../../io/computedCsv.ts";
import { standardTable } from "../../io/standardTable.ts";
import { writeCsv } from "../../io/writeCsv.ts";
import { zipWorkbook } from "../../io/zipWorkbook.ts";
import { hashOf } from "../shell/hashOf.ts";
import { copyNow } from "../state/descentOf.ts";
import type { Store } from "../state/store.ts";
import { twoCopiesTitle } from "../subjects/copies/twoCopiesTitle.ts";
import { askAfterHindrance } from "./askAfterHindrance.ts";
import { askWhereToSave, canWriteFiles } from "./askWhereToSave.ts";
import { bringReaders } from "./bringReaders.ts";
import { keepOtherCopy } from "./otherCopy.ts";
import { proposedName } from "./proposedName.ts";
import type { SavedFile } from "./savedFile.ts";
import { saveFile } from "./saveFile.ts";
import { type Hindrance, writeFile } from "./writeFile.ts";

let saving = false;

/**
 * Saves the whole workbook, typed and worked-out sheets, as one zip: to the file it
 * was opened from or last saved in, to one that the person names, or, where the
 * browser cannot write files, among the downloads.
 */
export async function saveWorkbook(store: Store, asAnother = false): Promise<void> {
	if (saving) return;
	saving = true;
	try {
		if (canWriteFiles()) await saveToFile(store, asAnother);
		else download(store);
	} catch {
		// A browser may have its window for files and yet refuse it to this page.
		download(store);
	} finally {
		saving = false;
	}
}

async function saveToFile(store: Store, asAnother: boolean): Promise<void> {
	const { workbook, plan, book } = store.state;
	const { descent } = copyNow(store.state);
	const bytes = zipWorkbook(workbook, plan, descent);
	let file = asAnother ? undefined : book.in.file;
	let hindrance: Hindrance | undefined =
		file && book.in.saved && firstDay(book.in.saved) !== firstDay(workbook)
			? "other-plan"
			: undefined;
	for (;;) {
		file ??= await askWhereToSave(nameOf(workbook));
		if (!file) return;
		const written = hindrance ? { file, hindrance } : await writeFile(file, bytes);
		if (!written.hindrance) {
			return store.markSaved(book, { saved: workbook, file: written.file, descent, own: true });
		}
		const answer = await askAfterHindrance(written);
		if (answer === "leave" || !answer) return;
		if (answer === "together") return showTogether(written.file);
		file = answer === "again" ? written.file : undefined;
		hindrance = undefined;
	}
}

/** Takes what somebody else put into the file as another copy; once both are together, Save writes over it. */
async function showTogether(file: SavedFile): Promise<void> {
	const { name } = file.handle;
	const its = await bringReaders();
	const read = await its?.readAsking([{ name, bytes: file.seen }]);
	if (!read) return;
	keepOtherCopy({ ...read, names: [name], file, isOwnFile: true });
	location.hash = hashOf(twoCopiesTitle.file);
}

function download(store: Store): void {
	const { workbook, plan, book } = store.state;
	const { descent } = copyNow(store.state);
	// The Swedish way of writing a date is the international one, in this computer's own day.
	const name = nameOf(workbook, new Date().toLocaleDateString("sv"));
	saveFile(name, zipWorkbook(workbook, plan, descent), "application/zip");
	store.markSaved(book, { saved: workbook, download: name, descent, own: true });
}

function nameOf(workbook: Workbook, savedOn?: string): string {
	const { outcome } = settingsOf(workbook).unit_name;
	return proposedName(outcome.ok ? outcome.value : "", firstDay(workbook), savedOn);
}

function firstDay(workbook: Workbook): string {
	const { outcome } = settingsOf(workbook).plan_start;
	return outcome.ok ? outcome.value : "";
}

function settingsOf({ tables }: Workbook) {
	return readSettings(tables[unitSheet.file]).settings;
}

/** By this mark, and nothing else, some spreadsheets know that a CSV file is in UTF-8. */
const BYTE_ORDER_MARK = "\ufeff";

/** Saves one sheet as CSV. @param forSpreadsheets with the mark by which spreadsheets know its letters; other programs may take it for part of the first column's name */
export function saveSheet(
	workbook: Workbook,
	plan: Plan,
	file: string,
	forSpreadsheets: boolean,
): void {
	const computed = plan.tables[file];
	const table = workbook.tables[file];
	const text = computed ? computedCsv(computed) : table && writeCsv(standardTable(file, table));
	if (text !== undefined)
		saveFile(file, forSpreadsheets ? `${BYTE_ORDER_MARK}${text}` : text, "text/csv");
}
