import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { arrivesOn, isOverdue, type LotOnHand, lotsOnHand } from "./lotsOnHand.ts";

const NEVER = "9999-12-31";

/**
 * Lots of an item that are in the store on a day, not used up and not out of date,
 * first-expired-first-out; of those that end on one day, by their marks.
 */
export function usableLots(read: ReadWorkbook, item: string, day: IsoDate): GoodRow<LotsRow>[] {
	const firstDay = valueIn(read.settings.plan_start) ?? day;
	return lotsByItem(lotsOnHand(read), firstDay)
		.of(item)
		.filter((lot) => {
			const [arrives, expires] = [arrivesOn(lot), lot.row.value.expires_on];
			return (arrives === null || arrives <= day) && (expires === null || expires >= day);
		})
		.map(({ row }) => row);
}

/** What is in the store or still to come of each item, first to expire first: the same for all days of a plan. */
const lotsByItem = memoizeByObject((lots: readonly LotOnHand[], firstDay: IsoDate) => {
	const byItem = new Grouped<string, LotOnHand>();
	const usable = lots
		.filter((lot) => lot.quantity > 0 && !isOverdue(lot, firstDay))
		.sort((a, b) => inOrder(endOf(a), endOf(b)) || inOrder(a.row.value.lot, b.row.value.lot));
	for (const lot of usable) byItem.add(lot.row.value.item, lot);
	return byItem;
});

function endOf({ row }: LotOnHand): IsoDate {
	return row.value.expires_on ?? NEVER;
}
