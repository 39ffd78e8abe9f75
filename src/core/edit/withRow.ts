import type { Workbook } from "../workbook.ts";
import { tableOf, withTexts } from "./withTexts.ts";

/** The workbook with some cells of one row replaced; of a new row at the end, where none is named. */
export function withRow(
	workbook: Workbook,
	file: string,
	cells: Readonly<Record<string, string>>,
	row = tableOf(workbook, file).rows.length,
): Workbook {
	const texts = Object.entries(cells).map(([column, text]) => ({ row, column, text }));
	return withTexts(workbook, file, texts);
}
