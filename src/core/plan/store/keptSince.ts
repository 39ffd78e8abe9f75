import type { ReadTables } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";

/**
 * Since when the store is kept with this workbook: the first day of the journal, of an order
 * placed or of a plan kept. An order can only be late by days on which somebody could have known.
 *
 * @returns the first day of the plan where nothing was kept before it
 */
export function keptSince({ journal, placed, pastPlans }: ReadTables, firstDay: IsoDate): IsoDate {
	const days = [
		...journal.rows.map(({ value }) => value.day),
		...placed.rows.map(({ value }) => value.ordered_on),
		...pastPlans.rows.map(({ value }) => value.date),
	];
	return days.reduce((first, day) => (day < first ? day : first), firstDay);
}
