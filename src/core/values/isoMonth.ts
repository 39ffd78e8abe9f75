import { addDays, dayNumber, type IsoDate } from "./date.ts";

/** A calendar month as "2027-03". */
export type IsoMonth = string;

const MONTH = /^\d{4}-(0[1-9]|1[0-2])$/;

/** Every day of a month, in order; none where the text is no month from 1900 to 2199. @example "2028-02" has 29 */
export function daysOfMonth(month: IsoMonth): IsoDate[] {
	if (!MONTH.test(month) || month < "1900" || month >= "2200") return [];
	const days: IsoDate[] = [];
	for (let day = `${month}-01`; day.startsWith(month); day = addDays(day, 1)) days.push(day);
	return days;
}

/** The last day of the month in which a day lies. @example "2028-02-03" → "2028-02-29" */
export function endOfMonth(day: IsoDate): IsoDate {
	return daysOfMonth(monthOf(day)).at(-1) as IsoDate;
}

/** The month before. @example "2027-01" → "2026-12" */
export function monthBefore(month: IsoMonth): IsoMonth {
	return addDays(`${month}-01`, -1).slice(0, MONTH_LENGTH);
}

const MONTH_LENGTH = "2027-03".length;

/** The month in which a day lies. */
export function monthOf(day: IsoDate): IsoMonth {
	if (dayNumber(day) === undefined) throw new Error(`not a date: ${day}`);
	return day.slice(0, MONTH_LENGTH);
}
