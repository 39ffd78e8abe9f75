import { type NewText, tableOf } from "../../../core/edit/withTexts.ts";
import { birthsSheet } from "../../../core/sheets/births.ts";
import { lineOf } from "../../../core/workbook.ts";
import type { State } from "../../state/store.ts";

/** What births.csv says of a day: the text as typed, and where it stands. */
export interface ShownBirths {
	readonly text: string;
	readonly line: number | null;
}

/** Looks up days in births.csv. A day without a row, or with a blank, has the text "". */
export function birthsOfDays(state: State): (date: string) => ShownBirths {
	const table = tableOf(state.workbook, birthsSheet.file);
	const dateAt = table.header.indexOf("date");
	const birthsAt = table.header.indexOf("births");
	const rows = new Map(table.rows.map((cells, row) => [(cells[dateAt] ?? "").trim(), row]));
	return (date) => {
		const row = rows.get(date);
		if (row === undefined) return { text: "", line: null };
		return { text: table.rows[row]?.[birthsAt] ?? "", line: lineOf(table, row) };
	};
}

/** What to write into births.csv for new figures of days; a day that is not there yet gets its row. */
export function birthsTexts(
	state: State,
	figures: readonly { readonly date: string; readonly text: string }[],
): NewText[] {
	const table = tableOf(state.workbook, birthsSheet.file);
	const dateAt = table.header.indexOf("date");
	const days = table.rows.map((cells) => (cells[dateAt] ?? "").trim());
	let next = days.length;
	return figures.flatMap(({ date, text }) => {
		const row = days.indexOf(date);
		if (row >= 0) return [{ row, column: "births", text }];
		if (text.trim() === "") return [];
		const at = next++;
		return [
			{ row: at, column: "date", text: date },
			{ row: at, column: "births", text },
		];
	});
}
