import type { RowOf } from "../sheet.ts";
import type { orderSheet } from "../sheets/order.ts";

export type OrderRow = RowOf<typeof orderSheet>;

/** What a unit is short of; a unit with more than enough is short of nothing. */
export function needOf({ target_stock, usable, on_order }: OrderRow): number {
	return Math.max(0, (target_stock ?? 0) - (usable ?? 0) - (on_order ?? 0));
}

/** A row whose plan had no answer has blanks, and is not the same as needing nothing. */
export function hasNeed({ target_stock, usable, on_order }: OrderRow): boolean {
	return target_stock !== null && usable !== null && on_order !== null;
}

/** The pack's size: as stated, else what the packs ordered come to. */
export function sizeOf({ pack_size, order_packs, order_quantity }: OrderRow): number[] {
	if (pack_size) return [pack_size];
	// Files hold six decimals; more would tell 0.3 ÷ 3 from 0.1.
	return order_packs && order_quantity ? [Number((order_quantity / order_packs).toFixed(6))] : [];
}

/** The price of a pack, as stated, else what the packs ordered cost each. */
export function priceOf({ pack_price, cost, order_packs }: OrderRow): number[] {
	if (pack_price !== null) return [pack_price];
	return cost !== null && order_packs ? [cost / order_packs] : [];
}
