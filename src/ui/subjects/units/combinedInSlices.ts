import type { ComputedRow, ComputedTable } from "../../../core/computedTable.ts";
import { combinedOrderSheet } from "../../../core/sheets/combinedOrder.ts";
import { combineOrders, type UnitOrder } from "../../../core/units/combineOrders.ts";

/**
 * The combined list, item by item, so that a page can stay alive between two.
 *
 * The same rows in the same order as combineOrders gives for all at once.
 */
export function* combinedInSlices(
	orders: readonly UnitOrder[],
): Generator<
	{ readonly done: number; readonly all: number },
	ComputedTable<typeof combinedOrderSheet>
> {
	const byItem = new Map<string, UnitOrder[]>();
	for (const order of orders)
		for (const row of order.rows.rows) {
			const key = JSON.stringify([row.value.item, row.value.measure]);
			const parts = byItem.get(key) ?? [];
			byItem.set(key, parts);
			parts.push({ ...order, rows: { ...order.rows, rows: [row] } });
		}
	const rows: ComputedRow<typeof combinedOrderSheet>[] = [];
	for (const parts of byItem.values()) {
		rows.push(...combineOrders(parts).rows);
		yield { done: rows.length, all: byItem.size };
	}
	return { sheet: combinedOrderSheet, rows };
}
