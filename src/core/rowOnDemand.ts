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
	return new Proxy(new WorkedWhenAsked(row, work), cellsUnder(keys)) as unknown as R & C;
}

class WorkedWhenAsked {
	readonly row: object;
	#work: (() => object) | undefined;
	#cells: object = {};

	constructor(row: object, work: () => object) {
		this.row = row;
		this.#work = work;
	}

	/** Work that fails is done again for whoever asks next. */
	get cells(): object {
		if (this.#work) this.#cells = this.#work();
		this.#work = undefined;
		return this.#cells;
	}
}

/**
 * The row as whoever reads it sees it. Made once for all rows of a sheet: to give each row
 * its cells one by one takes longer than to work most of them out.
 */
const cellsUnder = memoizeByObject((keys: readonly string[]): ProxyHandler<WorkedWhenAsked> => {
	const later = new Set<string | symbol>(keys);
	const cellOf = (of: WorkedWhenAsked, key: string | symbol): unknown =>
		Reflect.get(later.has(key) ? of.cells : of.row, key);
	return {
		get: cellOf,
		has: (of, key) => later.has(key) || key in of.row,
		ownKeys: ({ row }) => [...Reflect.ownKeys(row), ...keys],
		getOwnPropertyDescriptor(of, key) {
			const isThere = later.has(key) || Object.hasOwn(of.row, key);
			return isThere
				? { get: () => cellOf(of, key), enumerable: true, configurable: true }
				: undefined;
		},
	};
});
