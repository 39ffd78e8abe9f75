import { MINUTES_PER_DAY } from "../../values/clock.ts";
import { daysFrom } from "../../values/date.ts";
import type { LocalTime } from "../../values/dateTime.ts";

/** Minutes from one moment to another on the ward's clock; below 0 where the other is earlier. */
export function minutesBetween(one: LocalTime, other: LocalTime): number {
	const days = daysFrom(one.date, other.date);
	return days * MINUTES_PER_DAY + other.minutes - one.minutes;
}
