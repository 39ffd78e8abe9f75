import { headerOf } from "../sheet.ts";
import { sheetOf } from "../sheets/sheetOf.ts";
import { type TextTable, type Workbook, withTable } from "../workbook.ts";

/** A text for one cell: row of the table (new rows are made as needed) and column key. */
export interface NewText {
	readonly row: number;
	readonly column: string;
	readonly text: string;
}

/** The table of a file as it is, or empty with the header its sheet asks for. */
export function tableOf(workbook: Workbook, file: string): TextTable {
	const definition = sheetOf(file);
	return workbook.tables[file] ?? { header: definition ? headerOf(definition) : [], rows: [] };
}

/** The workbook with many cells of one file replaced: one step, however many cells. */
export function withTexts(workbook: Workbook, file: string, changes: readonly NewText[]): Workbook {
	const table = tableOf(workbook, file);
	const header = [...table.header];
	for (const { column } of changes) if (!header.includes(column)) header.push(column);
	const rows = table.rows.map((cells) => cells);
	const fresh = new Set<number>();
	for (const { row, column, text } of changes) {
		while (rows.length <= row) rows.push(header.map(() => ""));
		if (!fresh.has(row)) {
			const before = rows[row] as readonly string[];
			rows[row] = header.map((_, at) => before[at] ?? "").concat(before.slice(header.length));
			fresh.add(row);
		}
		(rows[row] as string[])[header.indexOf(column)] = text;
	}
	const sameLength = rows.length === table.rows.length;
	const lines = sameLength && table.lines ? { lines: table.lines } : {};
	return withTable(workbook, file, { header, rows, ...lines });
}
