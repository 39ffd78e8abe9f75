import { valueIn } from "../../../core/outcome.ts";
import { type ReadWorkbook, readWorkbook } from "../../../core/read/readWorkbook.ts";
import { addDays, dayNumber, type IsoDate, isoDate } from "../../../core/values/date.ts";
import { daysOfMonth, type IsoMonth, monthOf } from "../../../core/values/isoMonth.ts";
import { shownDateAndYear, shownMonth } from "../../format/shownDay.ts";
import type { State } from "../../state/store.ts";

/** Days from one to another, both of them. */
export interface Span {
	readonly from: IsoDate;
	readonly to: IsoDate;
}

/** Longest span that a report is made for, in days: two years and a leap day. */
const LONGEST_DAYS = 731;

/** The days of a span in order; none where it ends before it begins, is no date, or is longer than two years. */
export function daysOfSpan({ from, to }: Span): IsoDate[] {
	const [first, last] = [dayNumber(from), dayNumber(to)];
	if (first === undefined || last === undefined || last < first) return [];
	if (last - first >= LONGEST_DAYS) return [];
	return Array.from({ length: last - first + 1 }, (_, at) => isoDate(first + at));
}

export function spanOfMonth(month: IsoMonth): Span {
	const days = daysOfMonth(month);
	return { from: days[0] ?? "", to: days.at(-1) ?? "" };
}

/** "Mar 2027" for a whole month, else the two days. */
export function shownSpan({ from, to }: Span): string {
	const whole = spanOfMonth(monthOf(from));
	return whole.from === from && whole.to === to
		? `${shownMonth(from)} ${from.slice(0, 4)}`
		: `${shownDateAndYear(from)} – ${shownDateAndYear(to)}`;
}

/** Months of which anything was planned or written down, the latest first; always the one before the plan begins. */
export function monthsOnRecord(state: State): IsoMonth[] {
	const { tables, settings } = readWorkbook(state.workbook);
	const first = valueIn(settings.plan_start);
	const months = new Set(daysOnRecord(tables).map(monthOf));
	if (first !== undefined) months.add(monthOf(addDays(first, -1)));
	return [...months].sort().reverse();
}

function daysOnRecord(tables: ReadWorkbook["tables"]): IsoDate[] {
	return [
		...tables.records.rows.map(({ value }) => value.date),
		...tables.uses.rows.map(({ value }) => value.at.date),
		...tables.roundsDone.rows.map(({ value }) => value.date),
		...tables.checks.rows.map(({ value }) => value.checked_at.date),
		...tables.journal.rows.map(({ value }) => value.day),
		...tables.pastPlans.rows.map(({ value }) => value.date),
	];
}
