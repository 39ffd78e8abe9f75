import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { UsageRow } from "../../sheets/usage.ts";
import { nameInUse } from "../chlorine/nameInUse.ts";
import { hasUnreadLine } from "./hasUnreadLine.ts";
import { type ItemOverDays, usedOf } from "./itemsOverDays.ts";
import type { RoundsOverDays } from "./roundsOverDays.ts";
import { timesDone } from "./timesDone.ts";

/**
 * How often a thing must have been done before its use says anything: at 30, one time more
 * or less that was not written down changes the figure by a thirtieth (ESTIMATE).
 */
export const LEAST_TIMES = 30;
/**
 * How many times the largest single issue must have been used: what lies opened at the bench
 * was issued and not used yet, and is then less than a tenth of it (ESTIMATE).
 */
export const LEAST_ISSUES = 10;

/** What the books say goes each time, beside a line of what is used up. */
export interface UsageLearned {
	readonly row: GoodRow<UsageRow>;
	/** In the item's measure, over the days. */
	readonly used: number;
	/** How often it was done what the line counts by. */
	readonly times: number;
	/** used ÷ times. */
	readonly each: number;
	/** "enough": the figure may be taken over; otherwise what is missing. */
	readonly evidence: "enough" | "done_too_seldom" | "issued_too_seldom";
}

/**
 * What goes each time by the books, for an item with one line in usage.csv; undefined where
 * the record cannot tell: nothing was done or used, no line of the journal, several lines
 * that share one figure, a line that cannot be read, what nobody knows how often it was done, or
 * the product in use, which the plan takes by its dose.
 *
 * @param days how many
 */
export function usageLearned(
	read: ReadWorkbook,
	item: ItemOverDays,
	rounds: RoundsOverDays,
	days: number,
): UsageLearned | undefined {
	const { usage } = read.tables;
	if (item.item === nameInUse(read.tables)) return undefined;
	const [row, ...more] = usage.rows.filter(({ value }) => value.item === item.item);
	if (!row || more.length > 0 || !item.isKept || hasUnreadLine(usage, item.item)) return undefined;
	const times = timesDone(read, row.value.basis, rounds, days);
	const used = usedOf(item);
	if (!times || used <= 0) return undefined;
	const evidence =
		times < LEAST_TIMES
			? "done_too_seldom"
			: used < LEAST_ISSUES * item.largestIssue
				? "issued_too_seldom"
				: "enough";
	return { row, used, times, each: used / times, evidence };
}
