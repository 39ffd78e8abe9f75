import type { ComputedRow } from "./computedTable.ts";
import { memoizeByObject } from "./memoize.ts";
import type { Sheet } from "./sheet.ts";

/**
 * A row of a computed sheet whose cells are worked out when one of them is first looked at.
 *
 * For sheets of which a page shows few rows of many, at each edit anew.
 */
export function rowOnDemand<S extends Sheet>(sheet: S, work: () => ComputedRow<S>): ComputedRow<S> {
	return withCellsOnDemand({}, columnsOf(sheet), work) as ComputedRow<S>;
}

const columnsOf = memoizeByObject((sheet: Sheet) => Object.keys(sheet.columns));

/** The row with some cells more, which are worked out when one of them is first looked at. */
export function withCellsOnDemand<R extends object, C extends object>(
	row: R,
	keys: readonly (keyof C & string)[],
	work: () => C,
): R & C {
	const whole = Object.assign(new WorkedWhenAsked(work), row);
	return Object.defineProperties(whole, whenAsked(keys)) as unknown as R & C;
}

class WorkedWhenAsked<C extends object> {
	readonly #work: () => C;
	#cells: C | undefined;

	constructor(work: () => C) {
		this.#work = work;
	}

	static cell(key: string): PropertyDescriptor {
		return {
			enumerable: true,
			get(this: WorkedWhenAsked<Record<string, unknown>>) {
				this.#cells ??= this.#work();
				return this.#cells[key];
			},
		};
	}
}

/** Made once for all rows of a sheet. */
const whenAsked = memoizeByObject((keys: readonly string[]) =>
	Object.fromEntries(keys.map((key) => [key, WorkedWhenAsked.cell(key)])),
);
