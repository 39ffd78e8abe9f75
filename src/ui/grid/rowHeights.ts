import { needsTwoLines } from "./columnWidth.ts";
import type { GridColumn } from "./gridModel.ts";

export const ONE_LINE_PX = 34;
const TWO_LINES_PX = 52;
const HEAD_EDGE_PX = 16;
const HEAD_LINE_PX = 15;
const LEAST_HEAD_LINES = 2;

type TextAt = (row: number, column: number) => string;

/** Height of each row: taller where a text does not fit on one line. Numbers never break. */
export function rowHeights(
	columns: readonly GridColumn[],
	rowCount: number,
	text: TextAt,
): readonly number[] {
	const heightOf = heightsBy(columns, text);
	return Array.from({ length: rowCount }, (_, row) => heightOf(row));
}

/** The height of any row by its texts. */
export function heightsBy(columns: readonly GridColumn[], text: TextAt): (row: number) => number {
	const wordy = columns.flatMap((column, at) => (column.numeric ? [] : [at]));
	return (row) =>
		wordy.some((at) => needsTwoLines(text(row, at), columns[at]?.width ?? 0))
			? TWO_LINES_PX
			: ONE_LINE_PX;
}

/** Height of the column names: room for the one that takes most lines with its unit. */
export function headHeight(columns: readonly GridColumn[]): number {
	const lines = columns.map(
		({ label, unit, width }) => linesOf(label, width) + (unit === "" ? 0 : linesOf(unit, width)),
	);
	return HEAD_EDGE_PX + HEAD_LINE_PX * Math.max(LEAST_HEAD_LINES, ...lines);
}

function linesOf(text: string, width: number): number {
	return needsTwoLines(text, width) ? 2 : 1;
}
