import { nextDays } from "../../../core/edit/nextDays.ts";
import { type NewText, tableOf } from "../../../core/edit/withTexts.ts";
import { recordsSheet } from "../../../core/sheets/records.ts";
import type { GridModel } from "../../grid/gridModel.ts";
import type { PageCells, Writing } from "../../page.ts";
import { sheetCells } from "../../sheet/sheetCells.ts";
import type { State } from "../../state/store.ts";

const { file } = recordsSheet;
const cells = sheetCells(file);

/** The register: its empty row waits with the next day, which a figure typed there takes without its date. */
export const recordsCells: PageCells = {
	...cells,
	grid(state) {
		const grid = cells.grid(state);
		return grid && withNextDay(grid, state);
	},
	writing: (state, changes) => withDates(state, cells.writing(state, changes)),
	goOn(state) {
		const { header, rows } = tableOf(state.workbook, file);
		const column = cells.grid(state)?.columns.findIndex(({ key }) => key === "births") ?? -1;
		return column < 0 || header.length === 0 ? undefined : { row: rows.length, column };
	},
};

function withNextDay(grid: GridModel, state: State): GridModel {
	const [day] = nextDays(state.workbook, 1);
	const dateAt = grid.columns.findIndex(({ key }) => key === "date");
	if (day === undefined) return grid;
	return {
		...grid,
		cell(row, column) {
			const cell = grid.cell(row, column);
			return row === grid.rowCount - 1 && column === dateAt
				? { ...cell, text: day, raw: "", standIn: true }
				: cell;
		},
	};
}

/** New rows without a date take the next days, in order. */
function withDates(state: State, { texts, ...writing }: Writing): Writing {
	const { rows } = tableOf(state.workbook, file);
	const given = texts.filter(({ row, text }) => row >= rows.length && text.trim() !== "");
	const dated = new Set(given.filter(({ column }) => column === "date").map(({ row }) => row));
	const bare = [...new Set(given.map(({ row }) => row))].filter((row) => !dated.has(row));
	const days = nextDays(state.workbook, bare.length);
	const dates = bare.flatMap((row, at): NewText[] => {
		const text = days[at];
		return text === undefined ? [] : [{ row, column: "date", text }];
	});
	const isBlankDate = ({ row, column }: NewText) => column === "date" && bare.includes(row);
	return { ...writing, texts: [...texts.filter((text) => !isBlankDate(text)), ...dates] };
}
