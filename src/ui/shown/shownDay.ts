import { dayNumber, type IsoDate, weekday } from "../../core/values/date.ts";

const DAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

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
