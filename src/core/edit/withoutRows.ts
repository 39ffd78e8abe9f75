import { type Workbook, withTable } from "../workbook.ts";
import { tableOf } from "./withTexts.ts";

/**
 * The workbook without some rows of a file; the rows after them move up by the lines that are gone.
 *
 * Without numbers of its own a table counts its lines from its rows.
 */
export function withoutRows(workbook: Workbook, file: string, gone: ReadonlySet<number>): Workbook {
	const { header, rows, lines } = tableOf(workbook, file);
	const kept = rows.filter((_, row) => !gone.has(row));
	if (kept.length === rows.length) return workbook;
	let linesGone = 0;
	const left = lines?.flatMap((line, row) => {
		if (!gone.has(row)) return [line - linesGone];
		linesGone += (lines[row + 1] ?? line) - line;
		return [];
	});
	return withTable(workbook, file, { header, rows: kept, ...(left && { lines: left }) });
}
