import type { GoodRow, ReadTable } from "../../read/rows.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";

/** Lots of an item that are in the store on a day, not used up and not out of date, first to expire first. */
export function usableLots(
	lots: ReadTable<LotsRow>,
	item: string,
	day: IsoDate,
): GoodRow<LotsRow>[] {
	const never = "9999-12-31";
	return lots.rows
		.filter(({ value }) => value.item === item && value.quantity > 0)
		.filter(({ value }) => value.arrives_on === null || value.arrives_on <= day)
		.filter(({ value }) => value.expires_on === null || value.expires_on >= day)
		.sort((a, b) => ((a.value.expires_on ?? never) < (b.value.expires_on ?? never) ? -1 : 1));
}
