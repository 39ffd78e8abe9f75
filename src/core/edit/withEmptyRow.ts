import { type Workbook, withTable } from "../workbook.ts";
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
		...(moved && { lines: moved }),
	});
}
