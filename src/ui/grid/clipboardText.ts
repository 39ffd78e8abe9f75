import Papa from "papaparse";

/**
 * A block of cells as a spreadsheet takes it from the clipboard: tabs and quoted line
 * breaks. It ends with a line break, so that blank cells at the end are cells too.
 */
export function clipboardText(
	data: readonly (readonly string[])[],
	row: number,
	column: number,
	endRow: number,
	endColumn: number,
): string {
	const block = data
		.slice(Math.min(row, endRow), Math.max(row, endRow) + 1)
		.map((cells) => cells.slice(Math.min(column, endColumn), Math.max(column, endColumn) + 1));
	return `${Papa.unparse(block, { delimiter: "\t", newline: "\n" })}\n`;
}
