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

/** "Wed 3 Mar"; text that is no date stays as it is. */
export function shownDay(date: IsoDate): string {
	if (dayNumber(date) === undefined) return date;
	const [, month, day] = date.split("-").map(Number);
	return `${DAYS[weekday(date)]} ${day} ${MONTHS[(month ?? 1) - 1]}`;
}

/** "Wed 3 Mar 2027". */
export function shownDayAndYear(date: IsoDate): string {
	return dayNumber(date) === undefined ? date : `${shownDay(date)} ${date.slice(0, 4)}`;
}
