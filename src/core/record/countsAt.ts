import { MINUTES_PER_DAY } from "../values/clock.ts";
import type { LocalTime, WrittenTime } from "../values/dateTime.ts";

/**
 * The moment at which something that happened to a kit counts. Where only its day was written
 * down it may be any moment of it: what makes a kit unsafe counts at the day's end, after every
 * round and check of it, and what makes it safe at the day's beginning, before them.
 *
 * @example used on 2027-02-27, no time → 2027-02-27 24:00
 */
export function countsAt({ date, minutes, isDayOnly }: WrittenTime, isSafe: boolean): LocalTime {
	return { date, minutes: isDayOnly && !isSafe ? MINUTES_PER_DAY : minutes };
}
