import { ChancesTogether } from "../counts/chancesTogether.ts";

/** What is known of the level of births: a Gamma distribution with shape a and rate b. */
export interface Level {
	readonly a: number;
	readonly b: number;
}

export interface Filtered extends Level {
	/** Sum of the logarithms of the one-day forecasts' chances of what then came. */
	readonly logLikelihood: number;
}

/** One day as it was forecast the day before; size and mean of a negative binomial. */
export type OnDay = (day: number, count: number, size: number, mean: number) => void;

/** After so long a gap that less than this is left of what was known, nothing is. */
const FORGOTTEN = 1e-100;

/** How a unit's days differ from each other: its level moves, and days vary of their own. */
export interface Variation {
	/** ω: what one day leaves of what was known, 0 to 1. */
	readonly discount: number;
	/** 1 ÷ the day's own size r; 0 where the days of one level are Poisson. */
	readonly daySpread: number;
}

/**
 * Size of the births of one day: 1/size = 1/A + 1/r + 1/(A·r).
 *
 * The level is Gamma with shape A, the day's own multiplier Gamma with shape r; their
 * product has this relative variance.
 */
function sizeOfDay(levelShape: number, daySpread: number): number {
	return 1 / (1 / levelShape + daySpread + daySpread / levelShape);
}

/**
 * Discounted Gamma-Poisson filter (Harvey and Fernandes 1989), with days that may vary
 * more than Poisson.
 *
 * Each day what was known is discounted, a and b times ω, the day is forecast as
 * negative binomial with mean μ = w·a/b, and then learned: a + y/(1 + μ/r),
 * b + w/(1 + μ/r), so that wild days count less; without a size r of its own, a + y and
 * b + w. A day without a record is only discounted. The first forecast comes after the
 * first day with a birth.
 *
 * @param counts births of each day, null where not recorded
 * @param factors weekday factor of each day, the first day's first, repeating
 * @param onDay told each forecast day by day
 * @example y = 3, 1, 4, 1, 5 with ω 0.9: a 11.8373, b 4.0951
 */
export function discountedFilter(
	counts: readonly (number | null)[],
	factors: readonly number[],
	{ discount, daySpread = 0 }: Pick<Variation, "discount"> & Partial<Variation>,
	onDay?: OnDay,
): Filtered {
	let a = 0;
	let b = 0;
	const likelihood = new ChancesTogether();
	for (let day = 0; day < counts.length; day++) {
		a *= discount;
		b *= discount;
		if (b < FORGOTTEN) a = b = 0;
		const count = counts[day] ?? null;
		if (count === null) continue;
		const factor = factors[day % factors.length] as number;
		const mean = a > 0 ? (factor * a) / b : 0;
		if (a > 0) {
			const size = daySpread === 0 ? a : sizeOfDay(a, daySpread);
			likelihood.add(count, size, mean);
			onDay?.(day, count, size, mean);
		}
		const weight = 1 + mean * daySpread;
		a += count / weight;
		b += factor / weight;
	}
	return { a, b, logLikelihood: likelihood.log };
}
