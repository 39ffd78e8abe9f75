import type { Workbook } from "../../workbook.ts";
import { type EntriesIn, entered } from "../store/entered.ts";
import { quantityOf, type WrongField } from "../store/storeEntry.ts";

/** A lot as it was counted, as typed; blank where it was not. */
export interface Count {
	readonly item: string;
	readonly lot: string;
	readonly quantity: string;
}

/** A count that differs from the books, in the item's measure. */
export interface CountDifference {
	readonly item: string;
	readonly lot: string;
	readonly books: number;
	readonly counted: number;
}

/** The workbook with its counts in the journal, or what keeps each from being written. */
export type CountsWritten =
	| {
			readonly ok: true;
			readonly workbook: Workbook;
			readonly counted: number;
			readonly differences: readonly CountDifference[];
	  }
	| {
			readonly ok: false;
			readonly wrong: readonly { readonly at: number; readonly field: WrongField }[];
	  };

/** Sums of typed quantities carry the rounding of adding. */
const SAME = 1e-9;

/**
 * Writes the counts of a whole store into its journal, in one step. A lot that was not
 * counted gets no line: a blank is no nought.
 *
 * @param entriesIn by which the books are told, as for one entry
 */
export function countsWritten(
	workbook: Workbook,
	day: string,
	counts: readonly Count[],
	note: string,
	entriesIn?: EntriesIn,
): CountsWritten {
	const wrong: { at: number; field: WrongField }[] = [];
	const differences: CountDifference[] = [];
	let next = workbook;
	let counted = 0;
	counts.forEach(({ item, lot, quantity }, at) => {
		if (quantity.trim() === "") return;
		const kept = { kind: "count", isNew: false, expires: "", made: "" } as const;
		const entry = { ...kept, item, lot, day, quantity, note };
		const result = entered(next, entry, entriesIn);
		if (!result.ok) {
			for (const field of result.wrong) wrong.push({ at, field });
			return;
		}
		next = result.workbook;
		counted++;
		if (result.done.kind !== "count") return;
		const { books } = result.done;
		// What is on hand now may be less: lines of later days, and what rounds drew, come after it.
		const found = quantityOf(entry);
		if (Math.abs(books - found) > SAME) differences.push({ item, lot, books, counted: found });
	});
	return wrong.length > 0
		? { ok: false, wrong }
		: { ok: true, workbook: next, counted, differences };
}
