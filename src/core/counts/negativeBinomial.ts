import { always, type Counts } from "./counts.ts";
import { poisson } from "./poisson.ts";
import { SMALLEST_TERM, Terms } from "./terms.ts";

const [below, above] = [new Terms(), new Terms()];

/** Beyond this size a negative binomial cannot be told from a Poisson count. */
const AS_GOOD_AS_POISSON = 1e9;

/**
 * A negative binomial count: Poisson, with a rate that is itself uncertain (Gamma–Poisson mixture).
 *
 * Built outwards from the most likely count and scaled to add up to 1, like the
 * Poisson. The variance is mean + mean²/size.
 *
 * @param size above 0, need not be whole
 * @param meanCount 0 or more
 * @example setAside(negativeBinomial(152, 7 * 152 / 31), 0.95) // 45
 */
export function negativeBinomial(size: number, meanCount: number): Counts {
	if (meanCount === 0) return always(0);
	if (size >= AS_GOOD_AS_POISSON) return poisson(meanCount);
	const share = meanCount / (meanCount + size);
	const mode = Math.max(0, Math.floor((meanCount * (size - 1)) / size));
	below.begin();
	for (let k = mode, term = 1; k > 0; k--) {
		term *= k / ((k - 1 + size) * share);
		if (term < SMALLEST_TERM) break;
		below.add(term);
	}
	above.begin();
	for (let k = mode + 1, term = 1; ; k++) {
		term *= ((k - 1 + size) / k) * share;
		if (term < SMALLEST_TERM) break;
		above.add(term);
	}
	const sum = 1 + above.sumFrom(below.sumFrom(0));
	const chance = new Float64Array(below.count + 1 + above.count);
	for (let i = 0; i < below.count; i++)
		chance[below.count - 1 - i] = (below.terms[i] as number) / sum;
	chance[below.count] = 1 / sum;
	for (let i = 0; i < above.count; i++)
		chance[below.count + 1 + i] = (above.terms[i] as number) / sum;
	return { first: mode - below.count, chance };
}

/**
 * Logarithm of the chance of exactly `count`.
 *
 * @example logChance(3, 3.5, 5.25) // log of 0.126228
 */
export function logChance(count: number, size: number, meanCount: number): number {
	if (meanCount === 0) return count === 0 ? 0 : Number.NEGATIVE_INFINITY;
	return (
		logRising(size, count) -
		logFactorial(count) -
		size * Math.log1p(meanCount / size) +
		count * (Math.log(meanCount) - Math.log(size + meanCount))
	);
}

/** Up to this count, sums of logarithms are as fast as an expansion and exact. */
const FEW = 30;
/** From this size on, the difference of two expansions loses digits. */
const LARGE = 1e6;

/** log of size · (size + 1) · … · (size + count − 1). */
function logRising(size: number, count: number): number {
	if (count > FEW && size < LARGE) return logGamma(size + count) - logGamma(size);
	let product = 1;
	let log = 0;
	for (let i = 0; i < count; i++) {
		product *= size + i;
		if (product > 1e250) {
			log += Math.log(product);
			product = 1;
		}
	}
	return log + Math.log(product);
}

const logFactorials = [0];

function logFactorial(count: number): number {
	if (count > 170) return logGamma(count + 1);
	for (let k = logFactorials.length; k <= count; k++)
		logFactorials.push((logFactorials[k - 1] as number) + Math.log(k));
	return logFactorials[count] as number;
}

/** Stirling's series, after shifting small arguments up; error below 1e-13. */
function logGamma(x: number): number {
	let shift = 0;
	let y = x;
	while (y < 12) shift -= Math.log(y++);
	const z = 1 / (y * y);
	const series = (1 / 12 - z * (1 / 360 - z * (1 / 1260 - z * (1 / 1680 - z / 1188)))) / y;
	return shift + (y - 0.5) * Math.log(y) - y + 0.5 * Math.log(2 * Math.PI) + series;
}
