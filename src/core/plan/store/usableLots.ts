import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { isOverdue, type LotOnHand, lotsOnHand } from "./lotsOnHand.ts";

const NEVER = "9999-12-31";

/**
 * Lots of an item that are in the store on a day, not used up and not out of date,
 * first-expired-first-out; of those that end on one day, by their marks.
 */
export function usableLots(read: ReadWorkbook, item: string, day: IsoDate): GoodRow<LotsRow>[] {
	const firstDay = valueIn(read.settings.plan_start) ?? day;
	return lotsByItem(lotsOnHand(read), firstDay)
		.of(item)
		.filter(
			({ value: { arrives_on: arrives, expires_on: expires } }) =>
				(arrives === null || arrives <= day) && (expires === null || expires >= day),
		);
}

/** What is in the store or still to come of each item, first to expire first: the same for all days of a plan. */
const lotsByItem = memoizeByObject((lots: readonly LotOnHand[], firstDay: IsoDate) => {
	const byItem = new Grouped<string, GoodRow<LotsRow>>();
	const rows = lots
		.filter((lot) => lot.quantity > 0 && !isOverdue(lot, firstDay))
		.map(({ row }) => row)
		.sort((a, b) => inOrder(endOf(a), endOf(b)) || inOrder(a.value.lot, b.value.lot));
	for (const row of rows) byItem.add(row.value.item, row);
	return byItem;
});

function endOf({ value }: GoodRow<LotsRow>): IsoDate {
	return value.expires_on ?? NEVER;
}
