import type { Column, Columns } from "../column.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import type { Problem } from "../problem.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import { badCell, tooManyCells } from "./cellProblems.ts";
import type { BadRow, GoodRow } from "./goodRow.ts";

/** One row of a sheet, as far as it could be understood. */
export interface ReadRow<R> {
	readonly row: GoodRow<R> | BadRow<R>;
	/** That the row has more cells than the header names. */
	readonly surplus: Problem | undefined;
}

/** What the cells of a row mean: a sheet's columns under a file's header. */
export interface Layout<C extends Columns = Columns> {
	readonly sheet: Sheet<C>;
	readonly header: readonly string[];
	/** Each column of the sheet, and which cell of a row is its; -1 where none is. */
	readonly columns: readonly {
		readonly key: string;
		readonly column: Column<unknown>;
		readonly at: number;
	}[];
}

/** @param names the header's, without spaces around them */
export function layoutOf<C extends Columns>(
	sheet: Sheet<C>,
	header: readonly string[],
	names: readonly string[],
): Layout<C> {
	return layoutOnce(sheet as Sheet, header, names) as Layout<C>;
}

/** A header of the same texts gives the same layout, so that the rows under it are not read again. */
const layoutOnce = memoize(
	(sheet: Sheet, header: readonly string[], names: readonly string[]): Layout => {
		const columns = Object.entries(sheet.columns).map(([key, column]) => ({
			key,
			column,
			at: names.indexOf(key),
		}));
		return { sheet, header, columns };
	},
	(sheet, header) => [sheet.columns, sheet.file, ...header],
);

/** Reads one row. */
export function readRow<C extends Columns>(
	cells: readonly string[],
	{ sheet: { file }, header: { length: width }, columns }: Layout<C>,
	line: number,
): ReadRow<RowOf<Sheet<C>>> {
	const value: Record<string, unknown> = {};
	const problems: Problem[] = [];
	const defaults: string[] = [];
	for (const { key, column, at } of columns) {
		const text = cells[at] ?? "";
		if (text.trim() === "" && column.fallback !== undefined) {
			value[key] = column.fallback;
			defaults.push(key);
			continue;
		}
		const read = column.value.schema.safeParse(text);
		if (read.success) value[key] = read.data;
		else
			problems.push(badCell({ file, line, column: key }, column.label, text, column.value.allowed));
	}
	const isSurplus = cells.slice(width).some((cell) => cell !== "");
	const row = {
		line,
		value: value as RowOf<Sheet<C>>,
		...(defaults.length > 0 ? { defaults } : {}),
	};
	return {
		row: problems.length === 0 ? row : { ...row, problems },
		surplus: isSurplus ? tooManyCells({ file, line, column: "" }, cells, width) : undefined,
	};
}

/** Reads one row, but one that an edit left alone, and so is the same object as before, not again. */
export const readRowOnce = memoizeByObject(readRow) as typeof readRow;
