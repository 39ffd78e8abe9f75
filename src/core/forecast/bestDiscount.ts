import { discountedFilter } from "./discountedFilter.ts";
import { type Point, topBetween } from "./topBetween.ts";

/** ω under which a level is let go the fastest. */
export const LEAST_DISCOUNT = 0.8;
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
	const point = (at: number): Point => ({ at, score: score(at) });
	const grid = Array.from({ length: GRID + 1 }, (_, i) =>
		point(LEAST_DISCOUNT + ((1 - LEAST_DISCOUNT) * i) / GRID),
	);
	const highest = Math.max(...grid.map((each) => each.score));
	const i = grid.findIndex((each) => each.score === highest);
	const best = grid[i] as Point;
	const [below, above] = [grid[i - 1], grid[i + 1]];
	if (below && above) return topBetween(score, [below, best, above], CLOSE_ENOUGH);
	return topNearEnd(score, best, (below ?? above) as Point);
}

/** Where the grid's best is its end: that end, or the top between it and its neighbour. */
function topNearEnd(score: (at: number) => number, end: Point, neighbour: Point): number {
	const aside = (distance: number): Point => {
		const at = end.at + Math.sign(neighbour.at - end.at) * distance;
		return { at, score: score(at) };
	};
	if (aside(CLOSE_ENOUGH).score <= end.score) return end.at;
	let far = neighbour;
	for (let distance = 0.5 / GRID; distance > CLOSE_ENOUGH; distance /= 2) {
		const between = aside(distance * (1 - LEAST_DISCOUNT));
		if (between.score > end.score)
			return topBetween(
				score,
				far.at < end.at ? [far, between, end] : [end, between, far],
				CLOSE_ENOUGH,
			);
		far = between;
	}
	return end.at;
}
