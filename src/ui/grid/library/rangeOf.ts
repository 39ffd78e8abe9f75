import type { CellRange } from "../cellRange.ts";

/** A whole row or column selected by its name begins before the first cell. */
export function rangeOf([row, column, endRow, endColumn]: [
	number,
	number,
	number,
	number,
]): CellRange {
	const from = (a: number, b: number) => Math.max(0, Math.min(a, b));
	const to = (a: number, b: number) => Math.max(0, a, b);
	return {
		top: from(row, endRow),
		left: from(column, endColumn),
		bottom: to(row, endRow),
		right: to(column, endColumn),
	};
}
