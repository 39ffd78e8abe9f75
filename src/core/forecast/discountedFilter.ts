import { logChance } from "../counts/negativeBinomial.ts";

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

/**
 * Discounted Gamma-Poisson filter (Harvey and Fernandes 1989).
 *
 * Each day what was known is discounted, a and b times ω, the day is forecast as
 * negative binomial with mean w·a/b and size a, and then learned: a + y, b + w. A
 * day without a record is only discounted. The first forecast comes after the
 * first day with a birth.
 *
 * @param counts births of each day, null where not recorded
 * @param factors weekday factor of each day, the first day's first, repeating
 * @param discount ω, 0 to 1
 * @param onDay told each forecast day by day
 * @example y = 3, 1, 4, 1, 5 with ω 0.9: a 11.8373, b 4.0951
 */
export function discountedFilter(
	counts: readonly (number | null)[],
	factors: readonly number[],
	discount: number,
	onDay?: OnDay,
): Filtered {
	let a = 0;
	let b = 0;
	let logLikelihood = 0;
	for (let day = 0; day < counts.length; day++) {
		a *= discount;
		b *= discount;
		const count = counts[day];
		if (count === null || count === undefined) continue;
		const factor = factors[day % factors.length] as number;
		if (a > 0) {
			const mean = (factor * a) / b;
			logLikelihood += logChance(count, a, mean);
			onDay?.(day, count, a, mean);
		}
		a += count;
		b += factor;
	}
	return { a, b, logLikelihood };
}

const LEAST_DISCOUNT = 0.8;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** The discount is found to within this. */
const CLOSE_ENOUGH = 1e-6;
const GRID = 20;

/**
 * The discount from 0.8 to 1 under which the register's own days were forecast best.
 *
 * The best of a grid, then closed in on between its neighbours.
 */
export function bestDiscount(
	counts: readonly (number | null)[],
	factors: readonly number[],
): number {
	const score = (discount: number) => discountedFilter(counts, factors, discount).logLikelihood;
	const at = (i: number) => LEAST_DISCOUNT + ((1 - LEAST_DISCOUNT) * i) / GRID;
	let best = 0;
	let highest = Number.NEGATIVE_INFINITY;
	for (let i = 0; i <= GRID; i++) {
		const likelihood = score(at(i));
		if (likelihood > highest) {
			highest = likelihood;
			best = i;
		}
	}
	let low = at(Math.max(0, best - 1));
	let high = at(Math.min(GRID, best + 1));
	let left = high - GOLDEN * (high - low);
	let right = low + GOLDEN * (high - low);
	let leftScore = score(left);
	let rightScore = score(right);
	while (high - low > CLOSE_ENOUGH) {
		if (leftScore >= rightScore) {
			high = right;
			right = left;
			rightScore = leftScore;
			left = high - GOLDEN * (high - low);
			leftScore = score(left);
		} else {
			low = left;
			left = right;
			leftScore = rightScore;
			right = low + GOLDEN * (high - low);
			rightScore = score(right);
		}
	}
	const middle = (low + high) / 2;
	return score(1) >= score(middle) ? 1 : middle;
}
