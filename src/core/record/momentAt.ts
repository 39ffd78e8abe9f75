import { MINUTES_PER_DAY } from "../values/clock.ts";
import { addDays, type IsoDate } from "../values/date.ts";
import type { LocalTime } from "../values/dateTime.ts";

/** Minutes after a day's midnight as a moment, also where they lie beyond the day. */
export function momentAt(date: IsoDate, minutes: number): LocalTime {
	const days = Math.floor(minutes / MINUTES_PER_DAY);
	return {
		date: days === 0 ? date : addDays(date, days),
		minutes: ((minutes % MINUTES_PER_DAY) + MINUTES_PER_DAY) % MINUTES_PER_DAY,
	};
}

/** The clock time that follows a start: where it reads less than the start, it is on the next day. @example from 23:30 to 01:10 → 1510 */
export function clockAfter(start: number, clock: number): number {
	return clock < start ? clock + MINUTES_PER_DAY : clock;
}
