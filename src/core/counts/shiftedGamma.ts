import { always, type Counts, TAIL } from "./counts.ts";
import type { Moments } from "./moments.ts";

/** A Gamma this even cannot be told from a normal count. */
const EVEN = 1e-4;
/** The skewness of the least even Gamma that still falls from its first value on. */
const MOST_SKEWED = 2;
/** Where so many numbers lie in one spread, not each has to be told apart. */
const FINE = 60;
/** No term further than so many spreads from the mean can be seen. */
const FURTHEST = 40;

/**
 * Whole numbers with the mean, variance and skewness given: a Gamma density moved to its
 * place (Pearson's type III), turned round where the skewness is below 0.
 *
 * For a total of very many days, whose exact distribution is nearly this one. What
 * would lie below 0 or above the most that can come is counted there. With hardly any
 * variance it is one of the two whole numbers beside the mean.
 *
 * @param limit numbers beyond it are left out: the chances of all others stay as they are
 */
export function shiftedGamma(
	{ mean, variance, third, most }: Moments,
	limit = Number.POSITIVE_INFINITY,
): Counts {
	const part = mean - Math.floor(mean);
	// No whole number varies less about this mean than one of its two neighbours.
	if (variance <= part * (1 - part)) return eitherSide(mean);
	const spread = Math.sqrt(variance);
	const skewness = Math.max(-MOST_SKEWED, Math.min(MOST_SKEWED, third / (variance * spread)));
	const turned = skewness < 0 ? -1 : 1;
	const density = { mean, spread, turned, skewness: Math.abs(skewness) };
	const step = Math.max(1, Math.floor(spread / FINE));
	const middle = Math.round(mean / step) * step;
	const below = termsFrom(belowMiddle, middle, -step, density);
	const above = termsFrom(aboveMiddle, middle + step, step, density);
	const from = middle - (below - 1) * step;
	const first = Math.max(0, from);
	const last = Math.max(first, Math.min(Math.ceil(most), middle + above * step));
	if (first > limit) return { first: limit, chance: new Float64Array(1) };
	let sum = 0;
	for (let i = below - 1; i >= 0; i--) sum += belowMiddle[i] as number;
	for (let i = 0; i < above; i++) sum += aboveMiddle[i] as number;
	const chance = new Float64Array(Math.min(last, limit) - first + 1);
	for (let i = 0; i < below + above; i++) {
		const at = Math.min(Math.max(from + i * step, first), last) - first;
		const each = (i < below ? belowMiddle[below - 1 - i] : aboveMiddle[i - below]) as number;
		if (at < chance.length) chance[at] = (chance[at] as number) + each / sum;
	}
	return { first, chance };
}

/** The whole numbers below and above, each as likely as gives this mean. */
function eitherSide(mean: number): Counts {
	const first = Math.floor(mean);
	const above = mean - first;
	return above === 0 ? always(first) : { first, chance: Float64Array.of(1 - above, above) };
}

/** Terms on either side of the middle, in lists that are kept: new ones each time would be much to tidy up. */
const MOST_TERMS = 2 * FINE * FURTHEST + 1;
const [belowMiddle, aboveMiddle] = [new Float64Array(MOST_TERMS), new Float64Array(MOST_TERMS)];

interface Density {
	readonly mean: number;
	readonly spread: number;
	/** -1 where it is turned round. */
	readonly turned: number;
	readonly skewness: number;
}

/** Terms in one direction, as far as they can be seen. @returns how many */
function termsFrom(
	terms: Float64Array,
	start: number,
	step: number,
	{ mean, spread, turned, skewness }: Density,
): number {
	const furthest = (FURTHEST * spread) / Math.abs(step);
	const shape = 4 / skewness ** 2;
	let count = 0;
	do {
		const z = (turned * (start + count * step - mean)) / spread;
		const each = Math.exp(logDensity(z, skewness, shape));
		if (count > 0 && each < TAIL) break;
		terms[count++] = each;
	} while (count < furthest);
	return count;
}

/** Logarithm of the density of a Gamma of mean 0, spread 1 and this skewness, but for a constant. */
function logDensity(z: number, skewness: number, shape: number): number {
	if (skewness < EVEN) return (-z * z) / 2;
	const up = 1 + (z * skewness) / 2;
	return up <= 0 ? Number.NEGATIVE_INFINITY : (shape - 1) * Math.log(up) - (2 * z) / skewness;
}
