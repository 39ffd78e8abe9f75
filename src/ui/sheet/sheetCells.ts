import { isTyped } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { computedGrid } from "../grid/computedGrid.ts";
import type { CellText, GridModel } from "../grid/gridModel.ts";
import { settingsGrid, settingTexts } from "../grid/settingsGrid.ts";
import { typedGrid } from "../grid/typedGrid.ts";
import type { PageCells, Writing } from "../page.ts";
import type { State } from "../state/store.ts";

/** The cells of one sheet; there are none of a computed sheet that has no rows yet. */
export function sheetCells(file: string): PageCells {
	return {
		fills: "down",
		grid: (state) => gridOf(state, file),
		writing: (state, changes) => writingOf(state, file, changes),
	};
}

function gridOf(state: State, file: string): GridModel | undefined {
	if (file === unitSheet.file) return settingsGrid(state);
	if (isTyped(file)) return typedGrid(state, file);
	const computed = state.plan.tables[file];
	return computed && computed.rows.length > 0 ? computedGrid(computed) : undefined;
}

function writingOf(state: State, file: string, changes: readonly CellText[]): Writing {
	if (file === unitSheet.file) return { file, texts: settingTexts(state, changes) };
	const keys = typedGrid(state, file).columns.map((column) => column.key);
	const texts = changes.flatMap(({ row, column, text }) => {
		const key = keys[column];
		return key === undefined ? [] : [{ row, column: key, text }];
	});
	return { file, texts };
}
