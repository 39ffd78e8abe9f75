import type { Problem } from "../problem.ts";

/** A row all of whose cells could be understood. */
export interface GoodRow<R> {
	readonly line: number;
	readonly value: R;
	/** Columns whose cell was blank, so that the column's default stands; absent where there are none. */
	readonly defaults?: readonly string[];
}

/** A row with at least one cell that could not: what was understood, and the problems. */
export interface BadRow<R> {
	readonly line: number;
	readonly value: Partial<R>;
	readonly problems: readonly Problem[];
}

/** All rows of a sheet. */
export interface ReadTable<R> {
	readonly file: string;
	readonly rows: readonly GoodRow<R>[];
	readonly badRows: readonly BadRow<R>[];
	/** Problems of the whole table: header, doubled rows. Those of cells are in badRows. */
	readonly problems: readonly Problem[];
	/** True where the file itself was absent. */
	readonly absent: boolean;
}
