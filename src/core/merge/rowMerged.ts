import type { Change, Conflict } from "./conflict.ts";

/** What becomes of one row where two copies come together. */
export interface RowMerged {
	/** Undefined where it is no longer there. */
	readonly cells: readonly string[] | undefined;
	readonly origin: string;
	/** Columns whose text is later than the row, and its save. */
	readonly changed: ReadonlyMap<string, string>;
	readonly conflicts: readonly Omit<Conflict, "line">[];
	readonly changes: readonly Change[];
}
