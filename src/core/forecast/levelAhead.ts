/** Beyond this many days the level is not known less still (estimate). */
const GROWTH_DAYS = 28;
/** Below this shape a Gamma level says "most likely none", and sets aside less the less it knows. */
const LEAST_SHAPE = 1;

/**
 * How well the level is known some days after the last recorded one: the shape A of a
 * Gamma(A, A) multiplier of its mean, A = max(min(1, a·ω), a·ω^min(k, 28)).
 *
 * The mean stays. What is not known stops growing after 28 days: without that a year's
 * total would be set aside at three times its mean.
 *
 * @param a shape of the level after the last recorded day
 * @param discount ω, 0.8 to 1
 * @param daysAhead k, at least 1; 1 is the day after the last recorded one
 * @example levelAhead(40, 0.9, 2) // 32.4
 */
export function levelAhead(a: number, discount: number, daysAhead: number): number {
	const least = Math.min(LEAST_SHAPE, a * discount);
	return Math.max(least, a * discount ** Math.min(Math.max(1, daysAhead), GROWTH_DAYS));
}
