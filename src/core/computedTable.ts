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
