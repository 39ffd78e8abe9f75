import { memoize } from "../memoize.ts";

/** Where a share may truly lie. */
export interface ShareBetween {
	readonly low: number;
	readonly high: number;
}

/**
 * Between which shares the truth lies when something was so on `times` of `of` occasions:
 * the exact binomial interval (Clopper and Pearson, Biometrika 26:404, 1934). Each end is
 * the share at which what was seen, or more extreme, has half the chance left over.
 *
 * @param times whole, 0 to `of`
 * @param of whole, at least 1
 * @param sureness 0 to 1: how often the interval is to hold the truth; it does so at least as often
 * @example shareBetween(0, 20, 0.95) // from 0 to 0.1684
 */
export const shareBetween = memoize(interval);

function interval(times: number, of: number, sureness: number): ShareBetween {
	const tail = (1 - sureness) / 2;
	return {
		low: times === 0 ? 0 : shareWhere((p) => 1 - chanceAtMostOf(times - 1, of, p) >= tail),
		high: times === of ? 1 : shareWhere((p) => chanceAtMostOf(times, of, p) <= tail),
	};
}

/** Halvings that leave less than a double can hold. */
const HALVINGS = 60;

/** The smallest share from which on something holds. */
function shareWhere(holds: (share: number) => boolean): number {
	let [low, high] = [0, 1];
	for (let step = 0; step < HALVINGS; step++) {
		const middle = (low + high) / 2;
		if (holds(middle)) high = middle;
		else low = middle;
	}
	return (low + high) / 2;
}

/** Chance (cumulative binomial) of at most `most` of `of`, each with the chance `p`, 0 < p < 1. */
function chanceAtMostOf(most: number, of: number, p: number): number {
	// In logarithms, because the first terms of many occasions are too small for a double.
	let log = of * Math.log1p(-p);
	const odds = Math.log(p) - Math.log1p(-p);
	let sum = Math.exp(log);
	for (let k = 1; k <= most; k++) {
		log += Math.log((of - k + 1) / k) + odds;
		sum += Math.exp(log);
	}
	return Math.min(1, sum);
}
