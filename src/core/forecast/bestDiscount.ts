import { discountedFilter } from "./discountedFilter.ts";

/** ω under which a level is let go the fastest. */
export const LEAST_DISCOUNT = 0.8;
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
	daySpread = 0,
): number {
	const score = (discount: number) =>
		discountedFilter(counts, factors, { discount, daySpread }).logLikelihood;
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
