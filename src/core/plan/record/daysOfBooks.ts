import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";
import { recordedDays } from "./recordedDays.ts";

/**
 * Of some days those of which the journal of the store and the rounds both tell: from the day
 * on which the later of the two begins, to the last day of which anything is written down.
 * What was gone while only one of them was kept, or on days still to come, says nothing of
 * how much goes each time.
 *
 * @param days in order, without gaps
 * @example a journal since January and rounds since 1 March, of a quarter → its days from 1 March on
 */
export function daysOfBooks({ tables }: ReadWorkbook, days: readonly IsoDate[]): IsoDate[] {
	const journal = tables.journal.rows.map(({ value }) => value.day);
	const rounds = tables.roundsDone.rows.map(({ value }) => value.date);
	const begun = [journal, rounds].flatMap((all) => all.sort().slice(0, 1));
	const last = recordedDays(tables).sort().at(-1) ?? "";
	return days.filter((day) => day <= last && begun.every((begin) => day >= begin));
}
