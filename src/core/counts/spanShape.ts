import type { LevelOfDay } from "./counts.ts";

/**
 * Shape of the one Gamma multiplier that forecast days in a row share as a total.
 *
 * Two days' levels have the covariance of the earlier one's variance, so with means μ
 * and relative level variances 1/A the total varies by Σ μᵢ/Aᵢ·(μᵢ + 2·Σ later μ); each
 * day's own multiplier of size r adds Σ μᵢ²·(1 + 1/Aᵢ)/r. Divided by the squared total,
 * that is 1 ÷ shape. One day alone has 1/shape = 1/A + 1/r + 1/(A·r).
 *
 * @param days in order of time
 * @returns Infinity where nothing is expected
 * @example two days of mean 3 with A 20 and 10: (9/20 + 9/10 + 18/20) ÷ 36 is 1/16
 */
export function spanShape(days: readonly LevelOfDay[]): number {
	let later = 0;
	let variance = 0;
	for (let i = days.length - 1; i >= 0; i--) {
		const { mean, levelShape, daySpread } = days[i] as LevelOfDay;
		const known = 1 / levelShape;
		variance += mean * known * (mean + 2 * later) + mean * mean * daySpread * (1 + known);
		later += mean;
	}
	return variance === 0 ? Number.POSITIVE_INFINITY : (later * later) / variance;
}
