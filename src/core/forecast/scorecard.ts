import { setAside } from "../counts/counts.ts";
import { logChance, negativeBinomial } from "../counts/negativeBinomial.ts";
import { DAYS_PER_WEEK } from "../values/date.ts";
import type { DailyCounts } from "./dailyCounts.ts";
import { discountedFilter } from "./discountedFilter.ts";
import type { Forecast } from "./forecast.ts";
import { factorsFrom } from "./weekdayFactors.ts";

/** How well past days were forecast the day before. */
export interface Scorecard {
	/** Days that could be forecast by all three ways. */
	readonly days: number;
	/** Share of days inside the 90 % interval, and inside the 50 % interval. */
	readonly coverage90: number;
	readonly coverage50: number;
	/** Mean logarithm of the chance given to what came; nearer 0 is better. */
	readonly logScore: number;
	/** The same for a plain mean of all days before. */
	readonly plainMean: number;
	/** The same for the births of the same weekday last week. */
	readonly lastWeek: number;
}

/** A baseline that says 0 would call a birth impossible; half a birth is the least it says. */
const LEAST_MEAN = 0.5;
/** A size at which the negative binomial is Poisson. */
const POISSON = 1e12;

/** Forecasts each day of the register from those before it, and compares with two simple ways. */
export function scorecard(
	{ firstDay, counts }: DailyCounts,
	{ factors, ...variation }: Forecast,
): Scorecard | undefined {
	const turned = factorsFrom(firstDay, factors);
	let days = 0;
	let inside90 = 0;
	let inside50 = 0;
	const sums = { forecast: 0, plainMean: 0, lastWeek: 0 };
	let seen = 0;
	let births = 0;
	let next = 0;
	discountedFilter(counts, turned, variation, (day, count, size, mean) => {
		for (; next < day; next++) {
			const before = counts[next] ?? null;
			if (before === null) continue;
			seen++;
			births += before;
		}
		const lastWeek = counts[day - DAYS_PER_WEEK] ?? null;
		// A week ago is among the days seen.
		if (lastWeek === null) return;
		days++;
		const ahead = negativeBinomial(size, mean);
		if (inside(ahead, count, 0.9)) inside90++;
		if (inside(ahead, count, 0.5)) inside50++;
		sums.forecast += logChance(count, size, mean);
		sums.plainMean += logChance(count, POISSON, Math.max(births / seen, LEAST_MEAN));
		sums.lastWeek += logChance(count, POISSON, Math.max(lastWeek, LEAST_MEAN));
	});
	if (days === 0) return undefined;
	return {
		days,
		coverage90: inside90 / days,
		coverage50: inside50 / days,
		logScore: sums.forecast / days,
		plainMean: sums.plainMean / days,
		lastWeek: sums.lastWeek / days,
	};
}

/** Smallest interval between equal tails that holds at least `share` of the chance. */
export function interval(counts: ReturnType<typeof negativeBinomial>, share: number) {
	return { low: setAside(counts, (1 - share) / 2), high: setAside(counts, (1 + share) / 2) };
}

function inside(
	counts: ReturnType<typeof negativeBinomial>,
	count: number,
	share: number,
): boolean {
	const { low, high } = interval(counts, share);
	return count >= low && count <= high;
}
