import { say } from "../../core/say.ts";
import type { GridModel } from "./gridModel.ts";

/** The same sheet with other rows in another order; the numbers in the margin stay those of the file. */
export function arrangedGrid(model: GridModel, rows: readonly number[], words: string): GridModel {
	const { rowName, measureOn } = model;
	const of = (row: number) => rows[row] ?? model.rowCount;
	return {
		name: say`${model.name}: ${words}`,
		columns: model.columns,
		rowCount: rows.length,
		openEnd: model.openEnd ?? false,
		headerHeight: model.headerHeight,
		rowHeight: (row) => model.rowHeight(of(row)),
		...(measureOn && { measureOn }),
		...(rowName ? { rowName: (row: number) => rowName(of(row)) } : {}),
		cell: (row, column) => model.cell(of(row), column),
	};
}
