import { say } from "../../core/say.ts";
import { dayNumber, type IsoDate, weekday } from "../../core/values/date.ts";

const DAYS = [say`Sun`, say`Mon`, say`Tue`, say`Wed`, say`Thu`, say`Fri`, say`Sat`];
const MONTHS = [
	say`Jan`,
	say`Feb`,
	say`Mar`,
	say`Apr`,
	say`May`,
	say`Jun`,
	say`Jul`,
	say`Aug`,
	say`Sep`,
	say`Oct`,
	say`Nov`,
	say`Dec`,
];

/** "3 Mar", where the day of the week says nothing; text that is no date stays as it is. */
export function shownDate(date: IsoDate): string {
	if (dayNumber(date) === undefined) return date;
	const day = Number(date.slice(8));
	const month = shownMonth(date);
	return day === 1 ? say`1 ${month}` : `${day} ${month}`;
}

/** "Mar"; of a text that is a date. */
export function shownMonth(date: IsoDate): string {
	return MONTHS[Number(date.slice(5, 7)) - 1] ?? "";
}

/** "3 Mar 2027". */
export function shownDateAndYear(date: IsoDate): string {
	return dayNumber(date) === undefined ? date : `${shownDate(date)} ${date.slice(0, 4)}`;
}

/** "Wed", where the day is one of those beside it; of a text that is a date. */
export function shownWeekday(date: IsoDate): string {
	return DAYS[weekday(date)] ?? "";
}

/** A day so far from those that are worked with is of another season, and its year is told. */
const SEASON_DAYS = 183;
let workedWith: IsoDate | undefined;

/** From now on days far from this one are shown with their year; undefined: none is. */
export function workWithDaysAround(day: IsoDate | undefined): void {
	workedWith = day;
}

/** "Wed 3 Mar"; with its year where it is of another season. */
export function shownDay(date: IsoDate): string {
	const day = dayNumber(date);
	if (day === undefined) return date;
	const here = dayNumber(workedWith ?? date) ?? day;
	return Math.abs(day - here) > SEASON_DAYS ? shownDayAndYear(date) : dayOfWeek(date);
}

/** "Wed 3 Mar 2027". */
export function shownDayAndYear(date: IsoDate): string {
	return dayNumber(date) === undefined ? date : `${dayOfWeek(date)} ${date.slice(0, 4)}`;
}

function dayOfWeek(date: IsoDate): string {
	return `${DAYS[weekday(date)]} ${shownDate(date)}`;
}
