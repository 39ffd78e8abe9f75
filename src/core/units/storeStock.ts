import type { ReadTable } from "../read/goodRow.ts";
import type { DistrictStockRow } from "../sheets/districtStock.ts";
import type { ItemNames } from "./itemNames.ts";

/** What the district's own store has of an item. */
export interface InStore {
	readonly item: string;
	/** "" where the file leaves it out. */
	readonly measure: string;
	readonly quantity: number;
	/** Line of the first that names it. */
	readonly line: number;
}

/** The district's store by its names of items, lines of one item added up. */
export function storeStock({ rows }: ReadTable<DistrictStockRow>, nameOf: ItemNames): InStore[] {
	const byItem = new Map<string, InStore>();
	for (const { line, value } of rows) {
		const [item, measure] = [nameOf(value.item), value.measure.trim()];
		const key = JSON.stringify([item, measure]);
		const before = byItem.get(key);
		const quantity = (before?.quantity ?? 0) + value.quantity;
		byItem.set(key, { item, measure, quantity, line: before?.line ?? line });
	}
	return [...byItem.values()];
}
