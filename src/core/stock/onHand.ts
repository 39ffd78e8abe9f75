import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import type { IsoDate } from "../values/date.ts";

/** What the journal of the store says happened to a lot. */
export const journalKinds = ["receipt", "issue", "loss", "count"] as const;

/** One entry of the journal. */
export interface JournalEntry {
	readonly day: IsoDate;
	readonly entry: (typeof journalKinds)[number];
	/** How much, in the item's measure; for a count, what is there. */
	readonly quantity: number;
}

/** What the books hold of a lot after its entries. */
export interface Books {
	/** Never below 0: nothing can go out or be lost that is not there. */
	readonly quantity: number;
	/** Issued or lost beyond what the books held; a count is due. */
	readonly short: number;
	/** What the counts found more (or less) than the books, added up. */
	readonly counted: number;
	readonly lastCount: JournalEntry | undefined;
}

/**
 * A lot's quantity, then its entries in the order of their days, entries of one day in
 * the order given. A count replaces what the books say and records the difference.
 *
 * @example 10, receipt 5, issue 3, loss 1, count 11 → 11 on hand, counted 0
 */
export function booksAfter(listed: number, entries: readonly JournalEntry[]): Books {
	let quantity = listed;
	let short = 0;
	let counted = 0;
	let lastCount: JournalEntry | undefined;
	const inOrder = [...entries].sort((a, b) => (a.day === b.day ? 0 : a.day < b.day ? -1 : 1));
	for (const each of inOrder) {
		const { entry, quantity: amount } = each;
		if (entry === "receipt") quantity += amount;
		else if (entry === "count") {
			counted += amount - quantity;
			quantity = amount;
			short = 0;
			lastCount = each;
		} else {
			short += Math.max(0, amount - quantity);
			quantity = Math.max(0, quantity - amount);
		}
	}
	return { quantity, short, counted, lastCount };
}

export interface OnHandInputs {
	readonly listed: number;
	readonly entries: readonly JournalEntry[];
}

export const onHandInputs = {
	listed: { label: say`Quantity in the list of lots`, unit: say`in the item's measure`, min: 0 },
	entries: { label: say`Entries of the journal`, unit: say`in the item's measure` },
};

/** What is left of a lot in the store. */
export const onHand = calculation<OnHandInputs, number>({
	key: "on_hand",
	label: say`On hand`,
	unit: say`in the item's measure`,
	formula: say`Quantity in the list of lots + receipts − issues − losses, day by day, never below 0; a count takes the place of what the books say.`,
	source: definition,
	inputs: onHandInputs,
	example: {
		inputs: {
			listed: 10,
			entries: [
				{ day: "2027-02-01", entry: "receipt", quantity: 5 },
				{ day: "2027-02-02", entry: "issue", quantity: 3 },
				{ day: "2027-02-03", entry: "count", quantity: 11 },
				{ day: "2027-02-04", entry: "issue", quantity: 2 },
				{ day: "2027-02-05", entry: "loss", quantity: 1 },
			],
		},
		result: 8,
		within: 0,
	},
	compute: ({ listed, entries }) => booksAfter(listed, entries).quantity,
});
