import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { isOverdue, lotsOnHand } from "./lotsOnHand.ts";

const NEVER = "9999-12-31";

/**
 * Lots of an item that are in the store on a day, not used up and not out of date,
 * first-expired-first-out; of those that end on one day, by their marks.
 */
export function usableLots(read: ReadWorkbook, item: string, day: IsoDate): GoodRow<LotsRow>[] {
	const firstDay = valueIn(read.settings.plan_start) ?? day;
	return lotsOnHand(read)
		.filter(({ row, quantity }) => row.value.item === item && quantity > 0)
		.filter((lot) => !isOverdue(lot, firstDay))
		.map(({ row }) => row)
		.filter(({ value }) => value.arrives_on === null || value.arrives_on <= day)
		.filter(({ value }) => value.expires_on === null || value.expires_on >= day)
		.sort((a, b) => inOrder(endOf(a), endOf(b)) || inOrder(a.value.lot, b.value.lot));
}

function endOf({ value }: GoodRow<LotsRow>): IsoDate {
	return value.expires_on ?? NEVER;
}
