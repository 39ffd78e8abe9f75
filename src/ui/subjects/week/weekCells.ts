import { birthsSheet } from "../../../core/sheets/births.ts";
import type { PageCells } from "../../page.ts";
import { daysOf } from "../../state/daysOf.ts";
import { birthsTexts } from "./birthsOfDays.ts";
import { weekGrid } from "./weekGrid.ts";

/** The cells of the plan: what is typed over births goes into the row of its day in births.csv. */
export const weekCells: PageCells = {
	fills: "right",
	look: "week",
	grid: (state) => (daysOf(state).length > 0 ? weekGrid(state) : undefined),
	writing(state, changes) {
		const days = daysOf(state);
		const figures = changes.flatMap(({ row, column, text }) => {
			const date = days[column - 1];
			return row === 0 && date ? [{ date, text }] : [];
		});
		return { file: birthsSheet.file, texts: birthsTexts(state, figures) };
	},
};
