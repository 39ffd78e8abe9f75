import type { TextTable } from "./workbook.ts";

/** A table without the blank columns at its right and the blank rows at its foot that spreadsheets leave. */
export function withoutBlankEnds(table: TextTable): TextTable {
	const { header, rows, lines } = table;
	const isBlank = (cell: string | undefined) => (cell ?? "").trim() === "";
	let width = header.length;
	while (width > 0 && isBlank(header[width - 1]) && rows.every((row) => isBlank(row[width - 1])))
		width -= 1;
	let height = rows.length;
	while (height > 0 && (rows[height - 1] as readonly string[]).every(isBlank)) height -= 1;
	if (width === header.length && height === rows.length) return table;
	const cut = (cells: readonly string[]) =>
		cells.slice(width).every(isBlank) ? cells.slice(0, width) : cells;
	return {
		header: header.slice(0, width),
		rows: rows.slice(0, height).map(cut),
		...(lines ? { lines: lines.slice(0, height) } : {}),
	};
}
