import type { Problem } from "../core/problem.ts";
import { endingIn } from "./fileEndings.ts";
import { lastOfPath } from "./lastOfPath.ts";
import type { SpreadsheetSheet } from "./spreadsheets/cellsOfSheet.ts";
import { isSpreadsheet } from "./spreadsheets/isSpreadsheet.ts";
import { readSpreadsheet } from "./spreadsheets/readSpreadsheet.ts";
import { isZip, type NamedBytes, unzip } from "./unzip.ts";

/** A sheet in a spreadsheet's own file. */
export interface GivenSheet {
	/** The file as it was given. */
	readonly file: string;
	readonly sheet: SpreadsheetSheet;
	/** Set where it is the only one in its file, which then may be named after it. */
	readonly only: boolean;
}

export interface UnpackedFiles {
	readonly files: readonly NamedBytes[];
	readonly sheets: readonly GivenSheet[];
	/** Spreadsheets that gave no sheet. */
	readonly empty: readonly string[];
	readonly problems: readonly Problem[];
}

/** Files as they were given, with zips and spreadsheets unpacked; spreadsheets also out of a zip. */
export function unpackedFiles(given: readonly NamedBytes[]): UnpackedFiles {
	const files: NamedBytes[] = [];
	const sheets: GivenSheet[] = [];
	const empty: string[] = [];
	const problems: Problem[] = [];
	const takeSpreadsheet = (file: string, entries: readonly NamedBytes[]) => {
		const read = readSpreadsheet(file, entries);
		for (const wrong of read.problems) problems.push(wrong);
		const filled = read.sheets.filter(({ table }) => table.header.length > 0);
		if (filled.length === 0 && read.problems.length === 0) empty.push(file);
		for (const sheet of filled) sheets.push({ file, sheet, only: filled.length === 1 });
	};
	const take = (file: NamedBytes, isInZip: boolean) => {
		if (!isPacked(file, isInZip)) return void files.push(file);
		const unzipped = unzip(lastOfPath(file.name), file.bytes);
		if (isSpreadsheet(unzipped.files.map(({ name }) => name)))
			return takeSpreadsheet(file.name, unzipped.files);
		for (const wrong of unzipped.problems) problems.push(wrong);
		for (const entry of unzipped.files) take(entry, true);
	};
	for (const file of given) take(file, false);
	return { files, sheets, empty, problems };
}

const SPREADSHEET = endingIn("spreadsheet");
const SPREADSHEET_OR_ZIP = endingIn("spreadsheet", "zip");

/** A zip may have any name; within one it is a file of a person's own. */
function isPacked({ name, bytes }: NamedBytes, isInZip: boolean): boolean {
	return isInZip ? SPREADSHEET.test(name) : SPREADSHEET_OR_ZIP.test(name) || isZip(bytes);
}
