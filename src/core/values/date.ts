import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** A calendar day, "2027-03-01". No time zone: the ward's own wall calendar. */
export type IsoDate = string;

const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;
export const DAYS_PER_WEEK = 7;
/** As a quarter is planned for: thirteen whole weeks. */
export const DAYS_PER_QUARTER = 13 * DAYS_PER_WEEK;
const MILLISECONDS_PER_DAY = 86_400_000;

/**
 * Days since 1970-01-01, or undefined where there is no such day.
 *
 * @example dayNumber("1970-02-01") // 31
 */
export function dayNumber(date: string): number | undefined {
	const parts = ISO.exec(date);
	if (!parts) return undefined;
	const days =
		Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) / MILLISECONDS_PER_DAY;
	return isoDate(days) === date ? days : undefined;
}

/** The calendar day that is `days` days after 1970-01-01. */
export function isoDate(days: number): IsoDate {
	return new Date(days * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);
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

/** A calendar day from 1900 to 2199. */
export function date(): ValueKind<IsoDate> {
	return {
		allowed,
		numeric: false,
		written: "date",
		tableSchema: { type: "date", format: "%Y-%m-%d" },
		schema: textSchema(allowed, (text) => {
			const trimmed = text.trim();
			const inRange = trimmed >= "1900" && trimmed < "2200";
			return inRange && dayNumber(trimmed) !== undefined ? trimmed : undefined;
		}),
		write: (value) => value,
	};
}
