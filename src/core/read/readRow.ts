import type { Column, Columns } from "../column.ts";
import type { Problem } from "../problem.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import { badCell, tooManyCells } from "./cellProblems.ts";
import type { BadRow, GoodRow } from "./rows.ts";

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
	const columns = Object.entries(sheet.columns).map(([key, column]) => ({
		key,
		column,
		at: names.indexOf(key),
	}));
	return { sheet, header, columns };
}

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
		const text = at < 0 ? "" : (cells[at] ?? "");
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
	const isSurplus = cells.length > width && cells.slice(width).some((cell) => cell !== "");
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

const known = new WeakMap<readonly string[], { layout: Layout; read: ReadRow<unknown> }>();

/** Reads one row, but one that an edit left alone, and so is the same object as before, not again. */
export function readRowOnce<C extends Columns>(
	cells: readonly string[],
	layout: Layout<C>,
	line: number,
): ReadRow<RowOf<Sheet<C>>> {
	const before = known.get(cells);
	if (before?.read.row.line === line && isSame(before.layout, layout))
		return before.read as ReadRow<RowOf<Sheet<C>>>;
	const read = readRow(cells, layout, line);
	known.set(cells, { layout, read });
	return read;
}

function isSame(one: Layout, other: Layout): boolean {
	return (
		one.sheet.columns === other.sheet.columns &&
		one.sheet.file === other.sheet.file &&
		one.header.length === other.header.length &&
		one.header.every((key, at) => key === other.header[at])
	);
}
