import type { Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { JournalEntry } from "../../stock/onHand.ts";
import { booksAfter } from "../../stock/onHand.ts";
import { countsByNow } from "../countsByNow.ts";

/**
 * Why nobody knows what is left of a lot: lines of the journal that may be its own, that count
 * by now and that cannot be read. One of a day before its last count does not matter.
 *
 * @param entries of the lot that can be read
 */
export function unreadEntries(
	read: ReadWorkbook,
	{ item, lot }: Pick<LotsRow, "item" | "lot">,
	entries: readonly JournalEntry[],
): readonly Problem[] {
	const { badRows } = read.tables.journal;
	if (badRows.length === 0) return [];
	const counted = booksAfter(0, entries).lastCount?.day ?? "";
	return badRows
		.filter(({ value }) => value.item === item && (value.lot ?? lot) === lot)
		.filter(({ value: { day } }) => day === undefined || (day >= counted && countsByNow(read, day)))
		.flatMap(({ problems }) => problems);
}
