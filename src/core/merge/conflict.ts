import type { Save } from "./descent.ts";

/** Whose copy: the one that is open or named first, or the other. */
export type Side = "ours" | "theirs";

/** What one copy says in a conflict. */
export interface Said {
	/** Undefined where the row was deleted there. */
	readonly text: string | undefined;
	/** The save in which it came to say so, where that is known. */
	readonly save: Save | undefined;
}

/** What the copies say differently, each by itself: one cell, or a row that one changed and the other deleted. */
export interface Conflict {
	/** By this a choice is given; the same for the same two copies. */
	readonly key: string;
	readonly file: string;
	/** Key of the column; "" where a whole row is meant. */
	readonly column: string;
	/** What the row is known by. */
	readonly row: string;
	/** Line in the merged file; null where the row is not in it. */
	readonly line: number | null;
	readonly ours: Said;
	readonly theirs: Said;
	/** Set where nobody can tell which of them changed it. */
	readonly unsure?: true;
}

/** Which side counts in a conflict, by its key. */
export type Choices = ReadonlyMap<string, Side>;

/** What came from one copy into what both are together. */
export interface Change {
	readonly file: string;
	/** The copy that did it; the other one did not have it. */
	readonly from: Side;
	readonly kind: "added" | "changed" | "deleted";
	readonly row: string;
	/** Of a changed cell: its column, and the texts before and after. */
	readonly column?: string;
	readonly before?: string;
	readonly after?: string;
}
