import { betweenByChance } from "../../../core/counts/betweenByChance.ts";
import { SURENESS } from "../../../core/plan/record/calibration.ts";
import type { DayOfMeasure } from "../../../core/plan/record/daysOfMeasure.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { type IsoMonth, monthOf } from "../../../core/values/isoMonth.ts";

/** A stretch of days drawn as one: a day, or a month as the mean of its days. */
export interface SpanPoint {
	readonly from: IsoDate;
	readonly to: IsoDate;
	/** A day; undefined where nothing is recorded. */
	readonly done: number | undefined;
	readonly expected: number | undefined;
	/** The band; undefined where no plan was kept. */
	readonly low: number | undefined;
	readonly high: number | undefined;
	/** Of its days. */
	readonly recorded: number;
	readonly planned: number;
}

/** More days than this cannot be told apart in a picture, so they are drawn month by month. */
export const MOST_DAYS = 92;

/** What the band of a day is: what was set aside or, where plans keep no such number, what chance alone gives around what was expected. */
export type Band = "set_aside" | "by_chance";

export function dayPoints(days: readonly DayOfMeasure[], band: Band): SpanPoint[] {
	return days.map((day) => ({
		from: day.date,
		to: day.date,
		done: day.done,
		expected: day.expected,
		...bandOf(day, band),
		recorded: day.done === undefined ? 0 : 1,
		planned: day.expected === undefined && day.setAside === undefined ? 0 : 1,
	}));
}

function bandOf({ expected, setAside }: DayOfMeasure, band: Band) {
	if (band === "by_chance" && expected !== undefined) return betweenByChance(expected, SURENESS);
	const high = band === "set_aside" ? setAside : undefined;
	return { low: high === undefined ? undefined : 0, high };
}

/** Month by month, the mean of the days; what was expected and done are of the days that have both, where there are any. */
export function monthPoints(days: readonly DayOfMeasure[]): SpanPoint[] {
	const months = new Map<IsoMonth, DayOfMeasure[]>();
	for (const day of days) {
		const month = monthOf(day.date);
		months.set(month, [...(months.get(month) ?? []), day]);
	}
	return [...months.values()].map(monthPoint);
}

function monthPoint(days: readonly DayOfMeasure[]): SpanPoint {
	const recorded = days.filter(({ done }) => done !== undefined);
	const planned = days.filter(({ expected }) => expected !== undefined);
	const both = planned.filter(({ done }) => done !== undefined);
	const expected = meanOf((both.length > 0 ? both : planned).map((day) => day.expected ?? 0));
	const of = both.length > 0 ? both : recorded;
	const byChance =
		expected === undefined || both.length === 0
			? undefined
			: betweenByChance(expected * both.length, SURENESS);
	return {
		from: (days[0] as DayOfMeasure).date,
		to: (days.at(-1) as DayOfMeasure).date,
		done: meanOf(of.map(({ done }) => done ?? 0)),
		expected,
		low: byChance && byChance.low / both.length,
		high: byChance && byChance.high / both.length,
		recorded: recorded.length,
		planned: planned.length,
	};
}

function meanOf(values: readonly number[]): number | undefined {
	if (values.length === 0) return undefined;
	return values.reduce((sum, value) => sum + value, 0) / values.length;
}
