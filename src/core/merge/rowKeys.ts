import type { Sheet } from "../sheet.ts";
import type { TextTable } from "../workbook.ts";
import { columnNames } from "./columnNames.ts";

/** By what a row of one table can be known again in another. */
export interface RowKeys {
	/** The line's own id; "" where it has none. */
	id(row: number): string;
	/** What names it among the rows of its sheet; undefined where nothing does. */
	key(row: number): string | undefined;
	/** All its texts but the id. */
	content(row: number): string;
}

export function rowKeys(sheet: Sheet | undefined, table: TextTable): RowKeys {
	const names = columnNames(table);
	const cell = (row: number, at: number) =>
		(table.rows[row] as readonly string[])[at]?.trim() ?? "";
	const idAt = sheet && "id" in sheet.columns ? names.indexOf("id") : -1;
	const places = (sheet?.unique ?? sheet?.alike ?? []).map((name) => names.indexOf(name));
	const others = names
		.filter((_, at) => at !== idAt)
		.sort()
		.map((name) => ({ name, at: names.indexOf(name) }));
	return {
		id: (row) => cell(row, idAt),
		key(row) {
			const texts = places.map((at) => cell(row, at));
			return texts.some((text) => text !== "") ? JSON.stringify(texts) : undefined;
		},
		content(row) {
			let all = "";
			for (const { name, at } of others) {
				const text = cell(row, at);
				if (text !== "") all += `${name}\u0001${text}\u0002`;
			}
			return all;
		},
	};
}
