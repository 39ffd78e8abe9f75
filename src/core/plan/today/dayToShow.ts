import type { ReadTables } from "../../read/readWorkbook.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { recordedDays } from "../record/recordedDays.ts";

/** The day that a page of today shows, and why it is that one. */
export interface DayToShow {
	readonly day: IsoDate;
	/**
	 * "now": the clock's own day is in the plan. "over" and "to_come": it lies after the plan, or
	 * before it. "clock_behind": the record goes beyond the clock, so the clock is wrong or the
	 * workbook is an example: the first day of the plan then.
	 */
	readonly because: "now" | "over" | "to_come" | "clock_behind";
}

/**
 * Which day is today for a workbook.
 *
 * @param clock the day by the computer's clock
 * @param days of the plan, in order; at least one
 * @example a plan from 1 March with rounds written down on 28 February, by a clock of 2010 → 1 March, clock_behind
 */
export function dayToShow(clock: IsoDate, days: readonly IsoDate[], tables: ReadTables): DayToShow {
	const first = days[0] as IsoDate;
	const last = days.at(-1) as IsoDate;
	if (clock > last) return { day: clock, because: "over" };
	if (clock >= first) return { day: clock, because: "now" };
	return lastRecordedDay(tables) > clock
		? { day: first, because: "clock_behind" }
		: { day: clock, because: "to_come" };
}

/** The latest day of which anything is written down as done; "" where nothing is. */
export function lastRecordedDay(tables: ReadTables): IsoDate | "" {
	const ordered = tables.placed.rows.map(({ value }) => value.ordered_on);
	const days = [...recordedDays(tables), ...ordered];
	return days.reduce((latest, day) => (day > latest ? day : latest), "");
}

/** The days that can be chosen: those of the plan, the one before it, whose evening belongs to it, and the clock's own. */
export function daysToChoose(clock: IsoDate, days: readonly IsoDate[]): IsoDate[] {
	const first = days[0];
	const all = first === undefined ? [] : [addDays(first, -1), ...days];
	return [...new Set([...all, clock])].sort();
}
