import { dayNumber, type IsoDate } from "./date.ts";

/** What a date means with the day or the month first, as year-month-day; undefined where there is no such day. */
export interface DateForms {
	readonly dayFirst: IsoDate | undefined;
	readonly monthFirst: IsoDate | undefined;
}

const PARTS = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4}|\d{2})\.?$/;
const YEAR_FIRST = /^(\d{4})([/.-])(\d{1,2})\2(\d{1,2})$/;
const none: DateForms = { dayFirst: undefined, monthFirst: undefined };

/**
 * Both readings of a date of numbers. With points between them the day stands first
 * everywhere; a year in front leaves one reading. A year of two digits is taken into the
 * century in which it lies closest to `near`, and is not read without it.
 *
 * @param near a year of the workbook
 * @example dateForms("03/01/2027") // { dayFirst: "2027-01-03", monthFirst: "2027-03-01" }
 */
export function dateForms(text: string, near?: number): DateForms {
	const ahead = YEAR_FIRST.exec(text.trim());
	if (ahead) {
		const day = isoOf(Number(ahead[1]), Number(ahead[3]), Number(ahead[4]));
		return { dayFirst: day, monthFirst: day };
	}
	const [, first, mark, second, written] = PARTS.exec(text.trim()) ?? [];
	const year = yearOf(written, near);
	if (year === undefined) return none;
	return {
		dayFirst: isoOf(year, Number(second), Number(first)),
		monthFirst: mark === "." ? undefined : isoOf(year, Number(first), Number(second)),
	};
}

const CENTURY = 100;

function yearOf(written: string | undefined, near: number | undefined): number | undefined {
	if (written === undefined || written.length === 4)
		return written === undefined ? undefined : Number(written);
	if (near === undefined) return undefined;
	const first = near - CENTURY / 2 + 1;
	const ahead = (((Number(written) - first) % CENTURY) + CENTURY) % CENTURY;
	return first + ahead;
}

function isoOf(year: number, month: number, day: number): IsoDate | undefined {
	const two = (n: number) => String(n).padStart(2, "0");
	const date = `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
	return dayNumber(date) === undefined ? undefined : date;
}
