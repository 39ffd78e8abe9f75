import { birthsSheet } from "../../../core/sheets/births.ts";
import type { PageCells } from "../../page.ts";
import { birthsTexts } from "./birthsOfDays.ts";
import { weekGrid } from "./weekGrid.ts";
import { shownWeek } from "./weeksOf.ts";

/** The cells of the plan: what is typed over births goes into the row of its day in births.csv. */
export const weekCells: PageCells = {
	fills: "right",
	look: "week",
	grid(state) {
		const week = shownWeek(state);
		return week && weekGrid(state, week);
	},
	writing(state, changes) {
		const days = shownWeek(state)?.days ?? [];
		const figures = changes.flatMap(({ row, column, text }) => {
			const date = days[column - 1];
			return row === 0 && date ? [{ date, text }] : [];
		});
		return { file: birthsSheet.file, texts: birthsTexts(state, figures) };
	},
};
