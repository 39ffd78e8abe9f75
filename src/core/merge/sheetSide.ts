import type { Choices, Side } from "./conflict.ts";
import type { Save, SheetDescent } from "./descent.ts";

/** One copy's part in the merging of a sheet. */
export interface SheetSide {
	readonly side: Side;
	readonly descent: SheetDescent;
	/** The saves that led to this copy. */
	readonly saves: ReadonlyMap<string, Save>;
}

/** A column of the merged sheet: where it is in either copy, -1 where it is not. */
export interface MergedColumn extends Readonly<Record<Side, number>> {
	readonly name: string;
}

/** Two copies of a sheet that are brought together. */
export interface SheetSides {
	readonly file: string;
	readonly ours: SheetSide;
	readonly theirs: SheetSide;
	readonly columns: readonly MergedColumn[];
	readonly choices: Choices;
	/** What a person knows a row by. */
	nameOf(columns: readonly string[], cells: readonly string[]): string;
}

/** A row of one copy. */
export interface SideRow extends SheetSide {
	readonly at: number;
	readonly cells: readonly string[];
	readonly origin: string;
	/** Columns changed after the row was entered, and in which save. */
	readonly changed: ReadonlyMap<string, string>;
}

const NONE: ReadonlyMap<string, string> = new Map();

export function rowOf(side: SheetSide, at: number): SideRow {
	const { table, origins, changed } = side.descent;
	const [origin, cells] = [origins[at] as string, table.rows[at] as readonly string[]];
	return { ...side, at, cells, origin, changed: changed.get(origin) ?? NONE };
}

/**
 * A row's cells in the columns of the merged sheet; the very cells where none of them moves.
 * A cell beyond the header does, where the merged sheet has columns that the row's own had not.
 */
export function cellsIn(
	columns: readonly MergedColumn[],
	{ side, cells }: SideRow,
): readonly string[] {
	if (cells.every((_, at) => (columns[at] as MergedColumn)[side] === at)) return cells;
	return columns.map((column) => cells[column[side]] ?? "");
}

/** What a person knows a row by. */
export function nameOfRow({ columns, nameOf }: SheetSides, row: SideRow): string {
	return nameOf(
		columns.map(({ name }) => name),
		cellsIn(columns, row),
	);
}
