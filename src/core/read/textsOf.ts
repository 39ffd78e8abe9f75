import { headerOf, type Sheet } from "../sheet.ts";
import type { TextTable, Workbook } from "../workbook.ts";

/** The table of a sheet with each column's place found; a workbook without the file has none of its rows. */
export function textsOf(workbook: Workbook, sheet: Sheet) {
	const table: TextTable = workbook.tables[sheet.file] ?? { header: headerOf(sheet), rows: [] };
	const missing = headerOf(sheet).filter((key) => !table.header.includes(key));
	const header = [...table.header, ...missing];
	const place = (column: string) => header.indexOf(column);
	return {
		header,
		rows: table.rows,
		cell: (row: readonly string[], column: string) => row[place(column)] ?? "",
		/** A row with some cells replaced; one that is not there yet is blank otherwise. */
		row(before: readonly string[] | undefined, texts: Readonly<Record<string, string>>): string[] {
			const cells = header.map((_, at) => before?.[at] ?? "");
			for (const [column, text] of Object.entries(texts)) cells[place(column)] = text;
			return [...cells, ...(before?.slice(header.length) ?? [])];
		},
	};
}
