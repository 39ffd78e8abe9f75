import type { ReadTable } from "../../read/goodRow.ts";
import type { UsageRow } from "../../sheets/usage.ts";

/** Whether some line of what is used up cannot be read that is of the item, or nobody knows of which: then no sum of its lines is whole. */
export function hasUnreadLine({ badRows }: ReadTable<UsageRow>, item: string): boolean {
	return badRows.some(({ value }) => (value.item ?? item) === item);
}
