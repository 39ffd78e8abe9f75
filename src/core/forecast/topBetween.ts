/** A place, and how high a function is there. */
export interface Point {
	readonly at: number;
	readonly score: number;
}

/** More steps than a function with one smooth top between the ends ever takes. */
const MOST_STEPS = 40;

/** How far beside a place that seems to be the top its own neighbourhood is looked at, in parts of `closeEnough`. */
const BESIDE = 200;

/**
 * Where a smooth function is highest between two points lower than one between them
 * (successive parabolic interpolation): the top of the parabola through the three takes the
 * place of one of them, until it moves less than `closeEnough` among points near it.
 *
 * @example from 0, 0.5 and 1 of −(x − 0.3)², 0.3 in one step
 */
export function topBetween(
	score: (at: number) => number,
	[low, best, high]: readonly [Point, Point, Point],
	closeEnough: number,
): number {
	for (let step = 0; step < MOST_STEPS; step++) {
		let at = topOf(low, best, high);
		if (Math.abs(at - best.at) < closeEnough) {
			const beside = BESIDE * closeEnough;
			if (best.at - low.at <= 2 * beside && high.at - best.at <= 2 * beside) return at;
			at = best.at + (high.at - best.at > best.at - low.at ? beside : -beside);
		}
		const next = { at, score: score(at) };
		const isHigher = next.score > best.score;
		const end = isHigher ? best : next;
		if (isHigher === at < best.at) high = end;
		else low = end;
		if (isHigher) best = next;
	}
	return best.at;
}

/** Top of the parabola through three points, the middle one the highest; that one where all are alike. */
function topOf(low: Point, best: Point, high: Point): number {
	const left = best.at - low.at;
	const right = high.at - best.at;
	const fallLeft = (best.score - low.score) * right;
	const fallRight = (best.score - high.score) * left;
	const fall = fallLeft + fallRight;
	return fall > 0 ? best.at + (fallLeft * right - fallRight * left) / (2 * fall) : best.at;
}
