import { memoize } from "../memoize.ts";
import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** A calendar day, "2027-03-01". No time zone: the ward's own wall calendar. */
export type IsoDate = string;

const ISO = /^\d{4}-\d{2}-\d{2}$/;
export const DAYS_PER_WEEK = 7;
/** As a quarter is planned for: thirteen whole weeks. */
export const DAYS_PER_QUARTER = 13 * DAYS_PER_WEEK;
/** On average, over four years. */
export const DAYS_PER_YEAR = 365.25;
const ZERO = "0".charCodeAt(0);
const MILLISECONDS_PER_DAY = 86_400_000;
const DAYS_OF_MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Years before are taken for those of the last century by `Date`. */
const FIRST_YEAR = 100;

/**
 * Days since 1970-01-01, or undefined where there is no such day.
 *
 * @example dayNumber("1970-02-01") // 31
 */
export function dayNumber(date: string): number | undefined {
	if (!ISO.test(date)) return undefined;
	const year = digits(date, 0, 4);
	const month = digits(date, 5, 7);
	const day = digits(date, 8, 10);
	if (year < FIRST_YEAR || day < 1 || day > daysOfMonth(year, month)) return undefined;
	return Date.UTC(year, month - 1, day) / MILLISECONDS_PER_DAY;
}

/** The number that stands there; read in place, because a plan of a year reads dates by the ten thousand. */
function digits(text: string, from: number, to: number): number {
	let number = 0;
	for (let i = from; i < to; i++) number = number * 10 + text.charCodeAt(i) - ZERO;
	return number;
}

/** 0 where there is no such month. */
function daysOfMonth(year: number, month: number): number {
	if (month !== 2) return DAYS_OF_MONTHS[month - 1] ?? 0;
	return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
}

/** The calendar day that is `days` days after 1970-01-01. */
export const isoDate = memoize(
	(days: number): IsoDate => new Date(days * MILLISECONDS_PER_DAY).toISOString().slice(0, 10),
);

/**
 * Days from one date to another; below 0 where that is earlier.
 *
 * @example daysFrom("2027-02-27", "2027-03-01") // 2
 */
export function daysFrom(from: IsoDate, to: IsoDate): number {
	return (dayNumber(to) as number) - (dayNumber(from) as number);
}

/**
 * The day `days` after a valid date. Month ends and leap years follow the calendar.
 *
 * @example addDays("2028-02-28", 1) // "2028-02-29"
 */
export function addDays(date: IsoDate, days: number): IsoDate {
	const start = dayNumber(date);
	if (start === undefined) throw new Error(`not a date: ${date}`);
	return isoDate(start + days);
}

/** 0 for Sunday to 6 for Saturday. */
export function weekday(date: IsoDate): number {
	return (((dayNumber(date) ?? 0) % 7) + 11) % 7;
}

const allowed = say`a date as year-month-day, for example 2027-03-01`;

const FIRST_DAY = "1900-01-01";
const LAST_DAY = "2199-12-31";

/** A calendar day from 1900 to 2199. */
export function date(): ValueKind<IsoDate> {
	return {
		allowed,
		numeric: false,
		written: "date",
		tableSchema: { type: "date", format: "%Y-%m-%d" },
		schema: textSchema(allowed, (text) => {
			const trimmed = text.trim();
			const inRange = trimmed >= FIRST_DAY && trimmed <= LAST_DAY;
			return inRange && dayNumber(trimmed) !== undefined ? trimmed : undefined;
		}),
		write: (value) => value,
	};
}
