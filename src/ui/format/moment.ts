import { say } from "../../core/say.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR, writeClock } from "../../core/values/clock.ts";
import { addDays, type IsoDate } from "../../core/values/date.ts";
import type { WrittenTime } from "../../core/values/dateTime.ts";
import { shownDay, shownDayAndYear } from "./shownDay.ts";

const EVENING = 17 * MINUTES_PER_HOUR;

/** A moment as the boiling sheet writes it: "2027-02-28 20:13". */
export interface Moment {
	readonly date: IsoDate;
	/** Minutes after midnight. */
	readonly minutes: number;
}

/** Undefined where the text is no such moment. */
export function momentOf(text: string): Moment | undefined {
	const [date, hours, minutes] = text.split(/[ :]/);
	if (date === undefined || hours === undefined || minutes === undefined) return undefined;
	return { date, minutes: Number(hours) * MINUTES_PER_HOUR + Number(minutes) };
}

/** The moment so many minutes later; part minutes count as whole ones. */
export function momentLater({ date, minutes }: Moment, by: number): Moment {
	const after = Math.ceil(minutes + by - 1e-9);
	return {
		date: addDays(date, Math.floor(after / MINUTES_PER_DAY)),
		minutes: after % MINUTES_PER_DAY,
	};
}

/** "Sun 28 Feb 2027, 20:13". */
export function shownTime({ date, minutes }: Moment): string {
	return `${shownDayAndYear(date)}, ${writeClock(minutes)}`;
}

/** As it was written: "Sun 28 Feb 2027, 20:13", or the day alone where no time was. */
export function shownWritten(at: WrittenTime): string {
	return at.isDayOnly ? shownDayAndYear(at.date) : shownTime(at);
}

/** "20:13 the evening before, Sun 28 Feb", seen from the day for which it is done. */
export function shownBefore({ date, minutes }: Moment, day: IsoDate): string {
	const clock = writeClock(minutes);
	if (date === day) return say`${clock} the same day`;
	if (date !== addDays(day, -1)) return say`${clock} on ${shownDay(date)}`;
	return minutes >= EVENING
		? say`${clock} the evening before, ${shownDay(date)}`
		: say`${clock} the day before, ${shownDay(date)}`;
}
