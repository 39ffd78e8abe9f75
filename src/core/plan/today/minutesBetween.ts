import { MINUTES_PER_DAY } from "../../values/clock.ts";
import { dayNumber } from "../../values/date.ts";
import type { LocalTime } from "../../values/dateTime.ts";

/** Minutes from one moment to another on the ward's clock; below 0 where the other is earlier. */
export function minutesBetween(one: LocalTime, other: LocalTime): number {
	const days = (dayNumber(other.date) as number) - (dayNumber(one.date) as number);
	return days * MINUTES_PER_DAY + other.minutes - one.minutes;
}
