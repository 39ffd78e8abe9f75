import { type TextTable, type Workbook, withTable } from "../workbook.ts";
import { tableOf } from "./withTexts.ts";

/** The workbook with an empty row put in before row `at` of a file; the rows after it move down a line. */
export function withEmptyRow(workbook: Workbook, file: string, at: number): Workbook {
	const { header, rows, lines } = tableOf(workbook, file);
	const empty = header.map(() => "");
	const moved =
		lines && at < rows.length
			? [...lines.slice(0, at + 1), ...lines.slice(at).map((line) => line + 1)]
			: undefined;
	return withTable(workbook, file, {
		header,
		rows: [...rows.slice(0, at), empty, ...rows.slice(at)],
		...numbered(moved),
	});
}

/** The workbook without some rows of a file; the rows after them move up by the lines that are gone. */
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
	return withTable(workbook, file, { header, rows: kept, ...numbered(left) });
}

/** Without numbers of its own a table counts its lines from its rows. */
function numbered(lines: readonly number[] | undefined): Pick<TextTable, "lines"> {
	return lines ? { lines } : {};
}
