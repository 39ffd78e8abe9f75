import { needsTwoLines } from "./columnWidth.ts";
import type { GridColumn } from "./gridModel.ts";

const ONE_LINE_PX = 34;
const TWO_LINES_PX = 52;
const HEAD_PX = 46;
const TALL_HEAD_PX = 62;

/** Height of each row: taller where a text does not fit on one line. Numbers never break. */
export function rowHeights(
	columns: readonly GridColumn[],
	rowCount: number,
	text: (row: number, column: number) => string,
): readonly number[] {
	const wordy = columns.flatMap((column, at) => (column.numeric ? [] : [at]));
	return Array.from({ length: rowCount }, (_, row) =>
		wordy.some((at) => needsTwoLines(text(row, at), columns[at]?.width ?? 0))
			? TWO_LINES_PX
			: ONE_LINE_PX,
	);
}

/** Height of the line of column names: taller where a name of two lines has a unit beneath. */
export function headHeight(columns: readonly GridColumn[]): number {
	const tall = columns.some(({ label, unit, width }) => unit !== "" && needsTwoLines(label, width));
	return tall ? TALL_HEAD_PX : HEAD_PX;
}
