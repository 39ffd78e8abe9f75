import type { Columns } from "./column.ts";
import type { FiguresOf } from "./computedTable.ts";
import type { Sheet, ValueOf } from "./sheet.ts";

/**
 * The values of a computed row; without the figures they can be sent elsewhere and added
 * up. What has no answer is null, or "" in a column of text.
 */
export function valuesOf<C extends Columns>(
	{ columns }: Sheet<C>,
	row: FiguresOf<C>,
): { readonly [K in keyof C]: ValueOf<C[K]> } {
	const values = Object.entries(columns).map(([key, { value }]) => {
		const { outcome } = row[key] as FiguresOf<C>[string];
		if (outcome.ok) return [key, outcome.value];
		const blank = value.schema.safeParse("");
		return [key, blank.success ? blank.data : null];
	});
	return Object.fromEntries(values) as { readonly [K in keyof C]: ValueOf<C[K]> };
}
