import { tableOf } from "../../core/edit/withTexts.ts";
import type { Place } from "../../core/problem.ts";
import { isTyped } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { lineOf } from "../../core/workbook.ts";
import type { GridModel } from "../grid/gridModel.ts";
import { settingRowOf, VALUE_COLUMN } from "../grid/settingsGrid.ts";
import type { State } from "../state/store.ts";

/** Line of the first row of a computed sheet, under its header. */
export const FIRST_LINE = 2;

/** Where in its grid a place of a file stands; the first cell where no closer one is known. */
export function cellOf(
	state: State,
	model: GridModel,
	{ file, line, column }: Place,
): { readonly row: number; readonly column: number } {
	if (file === unitSheet.file)
		return { row: settingRowOf(state, line, column), column: VALUE_COLUMN };
	const table = tableOf(state.workbook, file);
	const row = isTyped(file)
		? table.rows.findIndex((_, at) => lineOf(table, at) === line)
		: (line ?? 0) - FIRST_LINE;
	const at = model.columns.findIndex(({ key }) => key === column);
	return { row: Math.max(0, row), column: Math.max(0, at) };
}
