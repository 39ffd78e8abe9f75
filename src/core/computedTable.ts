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
	return new TableOnDemand(sheet, rows);
}

/** A class, because engines keep what a getter of an object literal holds much longer than the object. */
class TableOnDemand implements ComputedTable {
	readonly sheet: Sheet;
	readonly #work: () => readonly ComputedRow[];
	#rows: readonly ComputedRow[] | undefined;

	constructor(sheet: Sheet, work: () => readonly ComputedRow[]) {
		this.sheet = sheet;
		this.#work = work;
	}

	get rows(): readonly ComputedRow[] {
		this.#rows ??= this.#work();
		return this.#rows;
	}
}
