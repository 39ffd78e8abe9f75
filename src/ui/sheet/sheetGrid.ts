import type { NewText } from "../../core/edit/withTexts.ts";
import { birthsSheet } from "../../core/sheets/births.ts";
import { isTyped } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { computedGrid } from "../grid/computedGrid.ts";
import type { CellText, GridModel } from "../grid/gridModel.ts";
import { settingsGrid, settingTexts } from "../grid/settingsGrid.ts";
import { typedGrid } from "../grid/typedGrid.ts";
import type { State } from "../state/store.ts";
import { planTitle } from "../subjects/week/planTitle.ts";
import { birthsTexts } from "../subjects/week/weekBirths.ts";
import { daysOf, weekGrid } from "../subjects/week/weekGrid.ts";

/** The cells of a sheet; undefined for a computed sheet of which there is nothing yet. */
export function sheetGrid(state: State, file: string): GridModel | undefined {
	if (file === planTitle.file) return daysOf(state).length > 0 ? weekGrid(state) : undefined;
	if (file === unitSheet.file) return settingsGrid(state);
	if (isTyped(file)) return typedGrid(state, file);
	const computed = state.plan.tables[file];
	return computed && computed.rows.length > 0 ? computedGrid(computed) : undefined;
}

/** What is to be written, and into which file of the workbook. */
export interface Writing {
	readonly file: string;
	readonly texts: readonly NewText[];
}

/** What texts in cells of a sheet mean in the workbook. */
export function writingOf(state: State, file: string, changes: readonly CellText[]): Writing {
	if (file === planTitle.file) {
		const days = daysOf(state);
		const figures = changes.flatMap(({ row, column, text }) => {
			const date = days[column - 1];
			return row === 0 && date ? [{ date, text }] : [];
		});
		return { file: birthsSheet.file, texts: birthsTexts(state, figures) };
	}
	if (file === unitSheet.file) return { file, texts: settingTexts(state, changes) };
	const keys = typedGrid(state, file).columns.map((column) => column.key);
	const texts = changes.flatMap(({ row, column, text }) => {
		const key = keys[column];
		return key === undefined ? [] : [{ row, column: key, text }];
	});
	return { file, texts };
}
