import { memoizeByObject } from "../../memoize.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import type { PlacedRow } from "../../sheets/placed.ts";
import { addDays, type IsoDate } from "../../values/date.ts";

/** An order that was placed and has neither come nor been given up. */
export interface OrderOnTheWay {
	readonly row: GoodRow<PlacedRow>;
	/** As written down; else the day it was ordered and the item's days to delivery. */
	readonly expectedOn: IsoDate;
}

/** Every order on its way, of items that the store lists. */
export const ordersOnTheWay = memoizeByObject(
	({ placed, items }: Pick<ReadTables, "placed" | "items">): readonly OrderOnTheWay[] => {
		const leadDays = new Map(items.rows.map(({ value }) => [value.item, value.lead_days]));
		return placed.rows.flatMap((row) => {
			const { item, packs, received_on: received, expected_on: expected } = row.value;
			const lead = leadDays.get(item);
			if (packs === 0 || received !== null || lead === undefined) return [];
			return [{ row, expectedOn: expected ?? addDays(row.value.ordered_on, Math.ceil(lead)) }];
		});
	},
);
