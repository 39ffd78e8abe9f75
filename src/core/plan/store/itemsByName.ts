import { memoizeByObject } from "../../memoize.ts";
import type { ReadTable } from "../../read/goodRow.ts";
import type { ItemsRow } from "../../sheets/items.ts";

/** The row of each item; the first, where one is listed twice. */
export const itemsByName = memoizeByObject(
	({ rows }: ReadTable<ItemsRow>) =>
		new Map(rows.toReversed().map((row) => [row.value.item, row] as const)),
);
