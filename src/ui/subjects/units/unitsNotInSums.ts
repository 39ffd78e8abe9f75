import type { ItemNames } from "../../../core/units/itemNames.ts";
import { hasNeed } from "../../../core/units/needOf.ts";
import type { HeldUnit } from "./heldUnit.ts";

/** The units that gave no stock or target of any item, as where no plan was made: said once, not at each item. */
export function unitsNotInSums(units: readonly HeldUnit[]): HeldUnit[] {
	return units.filter(({ orders }) => orders.length > 0 && !orders.some(hasNeed));
}

/** How many of an item's needs that are not known are theirs. */
export type SaidOnce = (item: string, measure: string) => number;

export function saidOnce(units: readonly HeldUnit[], nameOf: ItemNames): SaidOnce {
	const counts = new Map<string, number>();
	for (const { orders } of unitsNotInSums(units))
		for (const { item, measure } of orders) {
			const key = keyOf(nameOf(item), measure);
			counts.set(key, (counts.get(key) ?? 0) + 1);
		}
	return (item, measure) => counts.get(keyOf(item, measure)) ?? 0;
}

function keyOf(item: string, measure: string): string {
	return JSON.stringify([item, measure]);
}
