import { typedSheets } from "../sheets/typedSheets.ts";
import { type TextTable, type Workbook, withTable } from "../workbook.ts";

/** Sheets whose lines have a mark of their own. */
const files = typedSheets.filter(({ columns }) => "id" in columns).map(({ file }) => file);

/**
 * The workbook after an edit, with a mark for each line that the edit entered: where there
 * was no line before, or a blank one. A line that was emptied loses its mark, or it would
 * not be blank. Lines of old, and those of files, stay as they are.
 *
 * @param mark a short text that lines entered elsewhere, or at another time, do not have
 */
export function withLineIds(before: Workbook, after: Workbook, mark: () => string): Workbook {
	return files.reduce((workbook, file) => {
		const [was, now] = [before.tables[file], after.tables[file]];
		if (!now || now === was) return workbook;
		const marked = withMarks(was, now, mark);
		return marked === now ? workbook : withTable(workbook, file, marked);
	}, after);
}

function withMarks(was: TextTable | undefined, now: TextTable, mark: () => string): TextTable {
	const known = now.header.indexOf("id");
	const at = known < 0 ? now.header.length : known;
	// Cells beyond the header would come to stand under a new column.
	if (known < 0 && now.rows.some(({ length }) => length > at)) return now;
	let rows: (readonly string[])[] | undefined;
	for (const [row, cells] of now.rows.entries()) {
		const old = was?.rows[row];
		if (cells === old) continue;
		const isMarked = (cells[at] ?? "").trim() !== "";
		const isBlank = cells.every((cell, place) => place === at || cell.trim() === "");
		const isEntered = !isBlank && !isMarked && isBlankRow(old);
		if (!isEntered && !(isBlank && isMarked)) continue;
		rows ??= [...now.rows];
		const padded = Array.from({ length: Math.max(at + 1, cells.length) }, (_, i) => cells[i] ?? "");
		rows[row] = padded.with(at, isEntered ? mark() : "");
	}
	if (!rows) return now;
	return { ...now, header: known < 0 ? [...now.header, "id"] : now.header, rows };
}

function isBlankRow(cells: readonly string[] | undefined): boolean {
	return cells?.every((cell) => cell.trim() === "") ?? true;
}
