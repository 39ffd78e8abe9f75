import { memoize } from "../memoize.ts";
import type { Moments } from "./moments.ts";

/** Levels at which moments are worked out. */
const PIECES = 26;
/** `furthest` is taken a little further, so that many lists of days come to the same levels: a day's are worked out once. */
const FURTHER = 2 ** 0.25;

/**
 * Moments at every level up to `furthest`, from a few at which they are worked out.
 *
 * Cubic pieces (Catmull and Rom 1974) over the root of the level, which sets the points
 * closest where few kits come and a round's chance to run bends most.
 */
export function momentsBetween(
	momentsAt: (factor: number) => Moments,
	furthest: number,
): (factor: number) => Moments {
	const steps = Math.ceil(Math.log(furthest) / Math.log(FURTHER));
	const piece = Math.sqrt(FURTHER ** steps) / PIECES;
	const point = memoize((i: number) => momentsAt((Math.max(0, i) * piece) ** 2));
	return (factor) => {
		const place = Math.sqrt(factor) / piece;
		const i = Math.min(PIECES - 1, Math.floor(place));
		const t = place - i;
		const [a, b, c, d] = [point(i - 1), point(i), point(i + 1), point(i + 2)];
		const between = (of: "mean" | "variance" | "third") =>
			b[of] +
			0.5 *
				t *
				(c[of] -
					a[of] +
					t *
						(2 * a[of] -
							5 * b[of] +
							4 * c[of] -
							d[of] +
							t * (3 * (b[of] - c[of]) + d[of] - a[of])));
		return {
			mean: between("mean"),
			variance: Math.max(0, between("variance")),
			third: between("third"),
			most: c.most,
		};
	};
}
