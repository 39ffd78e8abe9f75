import type { Figure } from "./calculation.ts";
import type { Sheet } from "./sheet.ts";

/** A cell that the plan gives: a figure that can be asked "why?". */
export type ComputedCell = Figure<number> | Figure<string>;

/** One row of a computed sheet: a figure for every column key. */
export type ComputedRow = Readonly<Record<string, ComputedCell>>;

/** A sheet that the plan fills in. */
export interface ComputedTable {
	readonly sheet: Sheet;
	readonly rows: readonly ComputedRow[];
}

/**
 * A computed sheet whose rows are worked out when first looked at.
 *
 * For long sheets on which no other figure depends: an edit does not pay for them
 * until they are shown or exported. The rows are the same whenever that is.
 */
export function onDemand(sheet: Sheet, rows: () => readonly ComputedRow[]): ComputedTable {
	let known: readonly ComputedRow[] | undefined;
	return {
		sheet,
		get rows() {
			known ??= rows();
			return known;
		},
	};
}
