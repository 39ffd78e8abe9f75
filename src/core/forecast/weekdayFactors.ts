import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { DAYS_PER_WEEK, type IsoDate, weekday } from "../values/date.ts";
import type { DailyCounts } from "./dailyCounts.ts";

/** Weeks of even days that count beside those recorded, so that a few weeks do not make a pattern (estimate). */
const EVEN_WEEKS = 8;

/**
 * How much more or less than a mean day each weekday brings (seasonal factors with shrinkage), Sunday first, mean 1.
 *
 * Ratio of the weekday's mean to the mean of all days, drawn towards 1 by
 * n ÷ (n + 8), n being the weekday's recorded days.
 */
export const weekdayFactors = calculation<{ register: DailyCounts }, readonly number[]>({
	key: "weekday_factors",
	label: say`Weekday factors`,
	unit: say`times a mean day`,
	formula: say`Mean of the weekday ÷ mean of all days, drawn towards 1 by n ÷ (n + ${EVEN_WEEKS}) where n weeks are recorded; then scaled to a mean of 1.`,
	source: sources.weekdays,
	inputs: { register: { label: say`Births in the register`, unit: say`births/day` } },
	example: {
		// A Sunday with 7 births, then none: Sunday 1 + (7 − 1) ÷ 9, the others 1 − 1 ÷ 9; their mean is 1.
		inputs: { register: { firstDay: "2027-02-28", counts: [7, 0, 0, 0, 0, 0, 0] } },
		result: [15 / 9, 8 / 9, 8 / 9, 8 / 9, 8 / 9, 8 / 9, 8 / 9],
		within: 1e-12,
	},
	compute: ({ register }) => factorsOf(register),
});

export function factorsOf({ firstDay, counts }: DailyCounts): readonly number[] {
	const first = weekday(firstDay);
	const sums = new Array<number>(DAYS_PER_WEEK).fill(0);
	const weeks = new Array<number>(DAYS_PER_WEEK).fill(0);
	let all = 0;
	let days = 0;
	counts.forEach((count, i) => {
		if (count === null) return;
		const day = (first + i) % DAYS_PER_WEEK;
		sums[day] = (sums[day] as number) + count;
		weeks[day] = (weeks[day] as number) + 1;
		all += count;
		days++;
	});
	if (all === 0) return sums.map(() => 1);
	const drawn = sums.map((sum, day) => {
		const n = weeks[day] as number;
		const ratio = n === 0 ? 1 : sum / n / (all / days);
		return 1 + (ratio - 1) * (n / (n + EVEN_WEEKS));
	});
	const mean = drawn.reduce((sum, factor) => sum + factor, 0) / DAYS_PER_WEEK;
	return drawn.map((factor) => factor / mean);
}

/** The factors in the order of a register's days, its first day's first. */
export function factorsFrom(firstDay: IsoDate, factors: readonly number[]): readonly number[] {
	const first = weekday(firstDay);
	return factors.map((_, day) => factors[(first + day) % DAYS_PER_WEEK] as number);
}
