import Papa from "papaparse";
import { lineBreaks } from "../core/lineBreaks.ts";
import { unguarded } from "./guarded.ts";
import { type Separator, separatorOf } from "./separatorOf.ts";
import { type Slip, tidied } from "./tidied.ts";

export const BYTE_ORDER_MARKS = /^\ufeff+/;
const APOSTROPHE = 39;

export interface CsvRecords {
	/** Every line of the file in turn; one that is blank has a single blank cell. */
	readonly records: readonly string[][];
	/** Line of the file at which a record begins, the header's being 1. */
	readonly lineOf: (record: number) => number;
	/** Quote marks that do not enclose a cell, by their place in `tidy`. */
	readonly slips: readonly Slip[];
	readonly tidy: string;
	readonly separator: Separator;
	/** Characters of the longest cell. */
	readonly longestCell: number;
}

/** The records of a long CSV file in one go, by the rules of readCsv. */
export function csvRecords(text: string): CsvRecords {
	const body = text.replace(BYTE_ORDER_MARKS, "");
	const separator = separatorOf(body);
	const { text: tidy, slips } = body.includes('"') ? tidied(body, separator) : plain(body);
	const records = Papa.parse<string[]>(tidy, { delimiter: separator, newline: "\n" }).data;
	// What follows the last line end is no record.
	if (tidy === "" || tidy.endsWith("\n")) records.pop();
	let longestCell = 0;
	for (const cells of records)
		for (let at = 0; at < cells.length; at++) {
			const cell = cells[at] as string;
			if (cell.length > longestCell) longestCell = cell.length;
			if (cell.charCodeAt(0) === APOSTROPHE) cells[at] = unguarded(cell);
		}
	return { records, lineOf: linesOf(records, tidy), slips, tidy, separator, longestCell };
}

/** Without quote marks every line end ends a record, whatever it is written with. */
function plain(body: string): { readonly text: string; readonly slips: readonly Slip[] } {
	const text = body.includes("\r") ? body.replaceAll("\r\n", "\n").replaceAll("\r", "\n") : body;
	return { text, slips: [] };
}

/** Records are lines, unless line ends stand in quotes. */
function linesOf(records: readonly string[][], tidy: string): (record: number) => number {
	if (!tidy.includes('"')) return (record) => record + 1;
	const lines: number[] = [];
	let line = 1;
	for (const cells of records) {
		lines.push(line++);
		for (const cell of cells) line += lineBreaks(cell);
	}
	return (record) => lines[record] as number;
}
