import Papa from "papaparse";
import type { Problem } from "../core/problem.ts";
import type { TextTable } from "../core/workbook.ts";
import { longCells, MOST_ROWS, quoteProblem, tooManyRows } from "./csvProblems.ts";
import { dialectOf } from "./dialect.ts";
import { guarded, unguarded } from "./formulaGuard.ts";

const LINE_BREAK = /\r\n?|\n/g;
const BYTE_ORDER_MARKS = /^\ufeff+/;

/**
 * Reads a CSV file into texts, cell by cell, nothing guessed and nothing dropped.
 *
 * Separator (comma, semicolon, tab) and line ends are told from the header line.
 * A blank line is a row without cells. Rows keep their own number of cells, and
 * `lines` holds the file line where each begins. A quote that is never closed and
 * a cell beyond LONGEST_CELL are problems, and their text is kept. A file of more
 * than MOST_ROWS rows is a problem and is not read at all: the table is empty.
 */
export function readCsv(
	file: string,
	text: string,
): { readonly table: TextTable; readonly problems: readonly Problem[] } {
	const body = text.replace(BYTE_ORDER_MARKS, "");
	const { separator, lineEnd } = dialectOf(body);
	const records: string[][] = [];
	const lines: number[] = [];
	const problems: Problem[] = [];
	let start = 0;
	let line = 1;
	Papa.parse<string[]>(body, {
		delimiter: separator,
		newline: lineEnd,
		step: ({ data, errors, meta }, parser) => {
			const raw = body.slice(start, meta.cursor);
			if (raw === "") return; // what follows the last line end is no row
			const cells = cellsOf(data, raw, separator);
			const unclosed = errors.find((error) => error.code === "MissingQuotes");
			if (unclosed) cells.push(`"${cells.pop() ?? ""}`);
			const [wrong] = unclosed ? [unclosed] : errors;
			if (wrong) {
				const opened = line + lineBreaks(body.slice(start, wrong.index));
				problems.push(quoteProblem(file, opened, wrong.code, cells));
			}
			records.push(cells.map(unguarded));
			lines.push(line);
			line += lineBreaks(raw);
			start = meta.cursor;
			if (records.length > MOST_ROWS + 1) parser.abort();
		},
	});
	if (records.length > MOST_ROWS + 1)
		return { table: { header: [], rows: [] }, problems: [tooManyRows(file)] };
	const [header = [], ...rows] = records;
	const table = { header, rows, lines: lines.slice(1) };
	return { table, problems: [...problems, ...longCells(file, table)] };
}

/** The cells of one row: a blank line has none, and the CR of a CRLF belongs to no cell. */
function cellsOf(data: readonly string[], raw: string, separator: string): string[] {
	if (/^\r?\n$|^\r$/.test(raw)) return [];
	const cells = [...data];
	const last = cells.at(-1) ?? "";
	// A last cell that stands unquoted in the file took the CR with it. In quotes, a CR is text.
	const bare = raw === `${last}\n` || raw.endsWith(`${separator}${last}\n`);
	if (bare && last.endsWith("\r")) cells[cells.length - 1] = last.slice(0, -1);
	return cells;
}

function lineBreaks(text: string): number {
	return text.match(LINE_BREAK)?.length ?? 0;
}

/**
 * Writes a table so that readCsv gives back the same header and rows, whatever the text.
 *
 * RFC 4180: commas, quotes where needed, and lines ended by CRLF, which is also
 * what plain text editors of old computers need to show lines. No byte-order
 * mark, which other programs would take for part of the first column's name.
 * Text that a spreadsheet would run is written with an apostrophe in front.
 */
export function writeCsv(table: Pick<TextTable, "header" | "rows">): string {
	const records = [table.header, ...table.rows].map((cells) => cells.map(guarded));
	return `${Papa.unparse(records, { newline: "\r\n", quotes: needsQuotes })}\r\n`;
}

/** Beyond RFC 4180: separators of other dialects, and a lone blank cell, which is not a blank line. */
function needsQuotes(text: string, column: number): boolean {
	return (text === "" && column === 0) || /[;\t\ufeff]/.test(text);
}
