import type { ReadTables } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";

/** The days of all that is written down as it was done, in no order and each as often as it stands. */
export function recordedDays(tables: ReadTables): IsoDate[] {
	const { uses, roundsDone, checks, journal, records } = tables;
	return [
		...uses.rows.map(({ value }) => value.at.date),
		...roundsDone.rows.map(({ value }) => value.date),
		...checks.rows.map(({ value }) => value.checked_at.date),
		...journal.rows.map(({ value }) => value.day),
		...records.rows.map(({ value }) => value.date),
	];
}
