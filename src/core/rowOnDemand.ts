import type { ComputedRow } from "./computedTable.ts";
import type { Sheet } from "./sheet.ts";

/**
 * A row of a computed sheet whose cells are worked out when one of them is first looked at.
 *
 * For sheets of which a page shows one row of many, at each edit anew.
 */
export function rowOnDemand<S extends Sheet>(sheet: S, work: () => ComputedRow<S>): ComputedRow<S> {
	return Object.defineProperties({}, whenAsked(Object.keys(sheet.columns), work)) as ComputedRow<S>;
}

/** The row with some cells more, which are worked out when one of them is first looked at. */
export function withCellsOnDemand<R extends object, C extends object>(
	row: R,
	keys: readonly (keyof C & string)[],
	work: () => C,
): R & C {
	return Object.defineProperties(row, whenAsked(keys, work)) as R & C;
}

function whenAsked<C extends object>(
	keys: readonly string[],
	work: () => C,
): PropertyDescriptorMap {
	let cells: C | undefined;
	return Object.fromEntries(
		keys.map((key) => [
			key,
			{
				enumerable: true,
				get() {
					cells ??= work();
					return cells[key as keyof C];
				},
			},
		]),
	);
}
