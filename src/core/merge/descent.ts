import type { TextTable, Workbook } from "../workbook.ts";

/** One saving of a workbook. What it was, when and by whom is given from outside. */
export interface Save {
	/** Short and random; of a workbook that remembers nothing it follows from its content. */
	readonly id: string;
	/** Date and time as the clock of that computer had it; "" where nobody knows. */
	readonly at: string;
	/** Who saved, as they gave their name; "" where they gave none. */
	readonly by: string;
}

/** What a workbook remembers of one of its sheets. */
export interface SheetDescent {
	/** As it was at the last save. */
	readonly table: TextTable;
	/** Where each of its rows was first saved: the save and a number of the row's own in it. */
	readonly origins: readonly string[];
	/** Cells that changed afterwards: by row and column, the save in which they last did. */
	readonly changed: ReadonlyMap<string, ReadonlyMap<string, string>>;
	/** Rows deleted since, and the save in which they were. */
	readonly gone: ReadonlyMap<string, string>;
	/**
	 * Set where the sheet is not as it was saved: another program changed it, or it is damaged.
	 * A row that is not there then says nothing, and who changed a cell is not known.
	 */
	readonly altered?: true;
}

/**
 * Where a workbook comes from: all saves that led to it, and what each row of it stems from.
 *
 * Of two copies each knows by it what the other did since they parted: a text whose save is
 * not among the other's saves has not been seen there.
 */
export interface Descent {
	readonly saves: readonly Save[];
	readonly sheets: Readonly<Record<string, SheetDescent>>;
}

/** A copy of a workbook, in the clear form of the files, with its descent up to this state. */
export interface Copy {
	readonly workbook: Workbook;
	readonly descent: Descent;
}

/** The save in which a row was first. @example bornIn("k3f9a2.17") // "k3f9a2" */
export function bornIn(origin: string): string {
	return origin.slice(0, origin.lastIndexOf("."));
}
