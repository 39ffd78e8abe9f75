/** A cell of one copy. */
export interface CellState {
	readonly text: string;
	/** The save in which it was last changed. */
	readonly save: string;
	/** The other copy has not seen that save. */
	readonly isNew: boolean;
	/** Blank since its row was entered, independently of the other copy's row of the same name. */
	readonly neverFilled: boolean;
}

/**
 * Which copy's text counts. "open": both changed the cell, or nobody can tell who did, and a
 * person chooses; the newer one is not assumed to be right.
 */
export function decided(ours: CellState, theirs: CellState): "ours" | "theirs" | "open" {
	if (ours.text.trim() === theirs.text.trim())
		return theirs.isNew && !ours.isNew ? "theirs" : "ours";
	if (ours.neverFilled) return "theirs";
	if (theirs.neverFilled) return "ours";
	if (ours.isNew !== theirs.isNew) return ours.isNew ? "ours" : "theirs";
	return "open";
}
