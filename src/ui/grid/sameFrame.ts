import type { GridModel } from "./gridModel.ts";

/** Whether two models differ in nothing but what their cells say: columns, rows, heights, names, and who may write where. */
export function sameFrame(a: GridModel, b: GridModel): boolean {
	return (
		a.rowCount === b.rowCount &&
		a.headerHeight === b.headerHeight &&
		!a.rowName === !b.rowName &&
		sameColumns(a, b) &&
		sameRows(a, b)
	);
}

function sameColumns(a: GridModel, b: GridModel): boolean {
	return (
		a.columns.length === b.columns.length &&
		a.columns.every((column, at) => {
			const { key, label, unit, width, options } = b.columns[at] ?? column;
			return (
				column.key === key &&
				column.label === label &&
				column.unit === unit &&
				column.width === width &&
				column.options === options
			);
		})
	);
}

function sameRows(a: GridModel, b: GridModel): boolean {
	for (let row = 0; row < a.rowCount; row++)
		if (a.rowHeight(row) !== b.rowHeight(row) || a.rowName?.(row) !== b.rowName?.(row))
			return false;
	return true;
}
