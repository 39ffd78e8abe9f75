import type { Columns } from "../../../core/column.ts";
import type { Problem } from "../../../core/problem.ts";
import type { ReadTable } from "../../../core/read/goodRow.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { headerOf, type RowOf, type Sheet } from "../../../core/sheet.ts";
import { readSheetApart } from "../../../io/readSheetApart.ts";

interface ReadText<R> {
	readonly rows: ReadTable<R>;
	readonly problems: readonly Problem[];
	/** False where a line is not understood: the sums would be others. */
	readonly isRead: boolean;
}

/**
 * Reads a table of the district as it was typed, pasted from a spreadsheet or loaded; the
 * line with the columns' names may be left out.
 */
export function readDistrictText<C extends Columns>(
	sheet: Sheet<C>,
	text: string,
): ReadText<RowOf<Sheet<C>>> {
	const whole = withHeader(sheet, text);
	if (whole.trim() === "") return { rows: readTable(sheet, undefined), problems: [], isRead: true };
	const { rows, problems } = readSheetApart(sheet, new TextEncoder().encode(whole));
	const added = whole.length > text.length ? 1 : 0;
	return {
		rows: rows ?? readTable(sheet, undefined),
		problems: problems.map((one) => (one.line === null ? one : { ...one, line: one.line - added })),
		isRead: problems.every(({ weight }) => weight === "advice"),
	};
}

/** The text with its columns' names over it, as a file has them. */
export function withHeader(sheet: Sheet, text: string): string {
	if (text.trim() === "") return "";
	const [first = ""] = text.trimStart().split(/\r?\n/, 1);
	const keys = headerOf(sheet);
	const cells = first.split(/[,;\t]/).map((cell) => cell.trim().replaceAll('"', ""));
	if (cells.includes(keys[0] ?? "")) return text;
	const separator = /\t/.test(first) ? "\t" : /;/.test(first) ? ";" : ",";
	const wide = keys.slice(0, Math.max(cells.length, 2));
	return `${wide.join(separator)}\n${text}`;
}
