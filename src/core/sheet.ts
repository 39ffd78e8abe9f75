import type { Column, Columns } from "./column.ts";

/** One file of the workbook: its name on disk and its columns. */
export interface Sheet<C extends Columns = Columns> {
	/** File name, for example "births.csv". */
	readonly file: string;
	readonly title: string;
	/** What the sheet is for, in a sentence or two. */
	readonly about: string;
	/** A workbook without this file still opens, silently. */
	readonly optional?: boolean;
	/** Columns that together name a row: no two rows may agree in all of them. */
	readonly unique?: readonly string[];
	/** Columns by which rows of two copies are held to be the same, in a sheet that may have two rows of one name. */
	readonly alike?: readonly string[];
	readonly columns: C;
}

export type ValueOf<C> = C extends Column<infer T> ? T : never;
export type RowOf<S> =
	S extends Sheet<infer C> ? { readonly [K in keyof C]: ValueOf<C[K]> } : never;

export function sheet<const C extends Columns>(definition: Sheet<C>): Sheet<C> {
	return definition;
}

/** The header line of the file. */
export function headerOf(definition: Sheet): string[] {
	return Object.keys(definition.columns);
}
