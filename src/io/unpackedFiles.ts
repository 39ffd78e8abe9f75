import type { Problem } from "../core/problem.ts";
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
	const take = (file: NamedBytes, isInZip: boolean) => {
		const mayBe = isInZip ? SPREADSHEET : SPREADSHEET_OR_ZIP;
		if (!mayBe.test(file.name) && (isInZip || !isZip(file.bytes))) return void files.push(file);
		const unzipped = unzip(file.name.split(/[/\\]/).at(-1) ?? "", file.bytes);
		const names = unzipped.files.map(({ name }) => name);
		if (!isSpreadsheet(names)) {
			for (const wrong of unzipped.problems) problems.push(wrong);
			for (const entry of unzipped.files) take(entry, true);
		} else {
			const read = readSpreadsheet(file.name, unzipped.files);
			for (const wrong of read.problems) problems.push(wrong);
			const filled = read.sheets.filter(({ table }) => table.header.length > 0);
			if (filled.length === 0 && read.problems.length === 0) empty.push(file.name);
			for (const sheet of filled)
				sheets.push({ file: file.name, sheet, only: filled.length === 1 });
		}
	};
	for (const file of given) take(file, false);
	return { files, sheets, empty, problems };
}

const SPREADSHEET = /\.(xlsx|xlsm|ods)$/i;
const SPREADSHEET_OR_ZIP = /\.(xlsx|xlsm|ods|zip)$/i;
