import type { GoodRow } from "../../read/rows.ts";
import type { JournalRow } from "../../sheets/journal.ts";
import type { LotsRow } from "../../sheets/lots.ts";

/** A lot with what is left of it after the journal's entries. */
export interface LotOnHand {
	readonly lot: GoodRow<LotsRow>;
	/** Never below 0: nothing can be issued that is not there. */
	readonly quantity: number;
	/** Issued beyond what the books held; a count is due. */
	readonly short: number;
	/** What the counts found more (or less) than the books, added up. */
	readonly counted: number;
	readonly lastCount: GoodRow<JournalRow> | undefined;
}

/**
 * Stock on hand of a lot: its quantity, then the journal's entries in the order of
 * their days, entries of one day in the order of their lines. A count replaces what
 * the books say and records the difference.
 *
 * @example 10, receipt 5, issue 3, count 11 → 11 on hand, counted −1
 */
export function onHand(lot: GoodRow<LotsRow>, journal: readonly GoodRow<JournalRow>[]): LotOnHand {
	let quantity = lot.value.quantity;
	let short = 0;
	let counted = 0;
	let lastCount: GoodRow<JournalRow> | undefined;
	const entries = journal
		.filter(({ value }) => value.item === lot.value.item && value.lot === lot.value.lot)
		.sort((a, b) =>
			a.value.day === b.value.day ? a.line - b.line : a.value.day < b.value.day ? -1 : 1,
		);
	for (const row of entries) {
		const { entry, quantity: amount } = row.value;
		if (entry === "receipt") quantity += amount;
		else if (entry === "count") {
			counted += amount - quantity;
			quantity = amount;
			short = 0;
			lastCount = row;
		} else {
			short += Math.max(0, amount - quantity);
			quantity = Math.max(0, quantity - amount);
		}
	}
	return { lot, quantity, short, counted, lastCount };
}
