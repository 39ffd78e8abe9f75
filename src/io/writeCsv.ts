import Papa from "papaparse";
import type { TextTable } from "../core/workbook.ts";
import { guarded } from "./guarded.ts";

/**
 * Writes a table so that readCsv gives back the same header and rows, whatever the text.
 *
 * RFC 4180: commas, quotes where needed, and lines ended by CRLF, which is also
 * what plain text editors of old computers need to show lines. No byte-order
 * mark, which other programs would take for part of the first column's name.
 * Text that a spreadsheet would run is written with an apostrophe in front.
 */
export function writeCsv(table: Pick<TextTable, "header" | "rows">): string {
	return csvLines([table.header, ...table.rows]);
}

/** Lines as writeCsv writes them, of which the first is no header; "" for none. */
export function csvLines(lines: readonly (readonly string[])[]): string {
	if (lines.length === 0) return "";
	const records = lines.map((cells) => cells.map(guarded));
	return `${Papa.unparse(records, { newline: "\r\n", quotes: needsQuotes })}\r\n`;
}

/** Beyond RFC 4180: separators of other dialects, and a lone blank cell, which is not a blank line. */
function needsQuotes(text: string, column: number): boolean {
	return (text === "" && column === 0) || /[;\t\ufeff]/.test(text);
}
