import type { ComputedRow } from "./computedTable.ts";
import type { Sheet } from "./sheet.ts";

/**
 * A row of a computed sheet whose cells are worked out when one of them is first looked at.
 *
 * For sheets of which a page shows one row of many, at each edit anew.
 */
export function rowOnDemand<S extends Sheet>(sheet: S, work: () => ComputedRow<S>): ComputedRow<S> {
	let row: ComputedRow<S> | undefined;
	const cells = Object.keys(sheet.columns).map((key) => [
		key,
		{
			enumerable: true,
			get() {
				row ??= work();
				return row[key as keyof ComputedRow<S>];
			},
		},
	]);
	return Object.defineProperties({}, Object.fromEntries(cells)) as ComputedRow<S>;
}
