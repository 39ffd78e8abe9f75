import { MINUTES_PER_DAY, writeClock } from "../../../core/values/clock.ts";
import { addDays, type IsoDate } from "../../../core/values/date.ts";
import { shownDay } from "../../format/shownDay.ts";

/** A time of a round on the clock; past midnight with its date, because the shift changes: "00:10 (Tue 2 Mar)". */
export function roundClock(minutes: number, day: IsoDate): string {
	const whole = Math.round(minutes);
	const clock = writeClock(whole);
	if (whole < MINUTES_PER_DAY) return clock;
	return `${clock} (${shownDay(addDays(day, Math.floor(whole / MINUTES_PER_DAY)))})`;
}

/** From … to …; the date stands once, at the end, unless the start is past midnight too. */
export function roundSpan(startsAt: number, endsAt: number, day: IsoDate): string {
	const from =
		Math.round(startsAt) < MINUTES_PER_DAY ? roundClock(startsAt, day) : writeClock(startsAt);
	return `${from}–${roundClock(endsAt, day)}`;
}
