import type { Figure } from "./calculation.ts";
import type { Columns } from "./column.ts";
import type { Sheet, ValueOf } from "./sheet.ts";

/** A figure for each column, of the column's type; a blank is null where the column allows one. */
export type FiguresOf<C extends Columns> = { readonly [K in keyof C]: Figure<ValueOf<C[K]>> };

/** One row of a computed sheet: every cell is a figure that can be asked "why?". */
export type ComputedRow<S extends Sheet> = FiguresOf<S["columns"]>;

/** A row of whatever sheet, for what goes through the columns one by one. */
export type AnyRow = Readonly<Record<string, Figure<unknown>>>;

/** A sheet that the plan fills in. */
export interface ComputedTable<S extends Sheet> {
	readonly sheet: S;
	readonly rows: readonly ComputedRow<S>[];
}

/** A table of whatever sheet. */
export interface AnyTable {
	readonly sheet: Sheet;
	readonly rows: readonly AnyRow[];
}

/**
 * A computed sheet whose rows are worked out when first looked at.
 *
 * For long sheets on which no other figure depends: an edit does not pay for them
 * until they are shown or exported. The rows are the same whenever that is.
 */
export function onDemand<S extends Sheet>(
	sheet: S,
	rows: () => readonly ComputedRow<S>[],
): ComputedTable<S> {
	return new TableOnDemand(sheet, rows);
}

/** A class, because engines keep what a getter of an object literal holds much longer than the object. */
class TableOnDemand<S extends Sheet> implements ComputedTable<S> {
	readonly sheet: S;
	readonly #work: () => readonly ComputedRow<S>[];
	#rows: readonly ComputedRow<S>[] | undefined;

	constructor(sheet: S, work: () => readonly ComputedRow<S>[]) {
		this.sheet = sheet;
		this.#work = work;
	}

	get rows(): readonly ComputedRow<S>[] {
		this.#rows ??= this.#work();
		return this.#rows;
	}
}
