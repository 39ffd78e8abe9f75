import { memoize } from "../memoize.ts";
import { always, type Counts } from "./counts.ts";
import { SMALLEST_TERM, Terms } from "./terms.ts";

/**
 * A Poisson count with the mean given.
 *
 * Terms are built outwards from the most likely count, each from its neighbour,
 * and scaled to add up to 1: nothing underflows, however large the mean.
 *
 * @param meanCount 0 or more
 * @example setAside(poisson(3), 0.95) // 6
 */
export const poisson = memoize(poissonTerms);

/** The same, for a mean that is not likely to be asked again. */
export function poissonTerms(meanCount: number): Counts {
	if (meanCount === 0) return always(0);
	const mode = Math.floor(meanCount);
	below.begin();
	for (let term = 1, k = mode; k > 0; k--) {
		term *= k / meanCount;
		if (term < SMALLEST_TERM) break;
		below.add(term);
	}
	above.begin();
	for (let term = 1, k = mode + 1; ; k++) {
		term *= meanCount / k;
		if (term < SMALLEST_TERM) break;
		above.add(term);
	}
	const sum = above.sumFrom(below.sumFrom(1));
	const chance = new Float64Array(below.count + 1 + above.count);
	for (let i = 0; i < below.count; i++)
		chance[below.count - 1 - i] = (below.terms[i] as number) / sum;
	chance[below.count] = 1 / sum;
	for (let i = 0; i < above.count; i++)
		chance[below.count + 1 + i] = (above.terms[i] as number) / sum;
	return { first: mode - below.count, chance };
}

const [below, above] = [new Terms(), new Terms()];

/**
 * Expected excess, E[(N − kits)+] (the loss function), for a Poisson count N: how many uses, on average, find no kit.
 *
 * Summed over the smaller side of the count, so that it stays exact where it is tiny.
 *
 * @param kits whole, 0 or more
 * @param meanCount 0 or more
 */
export function expectedBeyond(kits: number, meanCount: number): number {
	return kits < meanCount
		? meanCount - kits + shortfallBelow(kits, meanCount)
		: excessAbove(kits, meanCount);
}

/** Up to this mean, the chance of 0 is a number that a product can begin with. */
const MODERATE = 600;

/** The chance of exactly `count`; for large means through logarithms, so that it does not underflow on the way. */
function chanceOf(count: number, meanCount: number): number {
	if (meanCount < MODERATE) {
		let chance = Math.exp(-meanCount);
		for (let k = 1; k <= count; k++) chance *= meanCount / k;
		return chance;
	}
	let log = -meanCount;
	for (let k = 1; k <= count; k++) log += Math.log(meanCount / k);
	return Math.exp(log);
}

function shortfallBelow(kits: number, meanCount: number): number {
	let term = chanceOf(kits, meanCount);
	let sum = 0;
	for (let k = kits; k > 0; k--) {
		term *= k / meanCount;
		sum += (kits - k + 1) * term;
	}
	return sum;
}

function excessAbove(kits: number, meanCount: number): number {
	let term = chanceOf(kits, meanCount);
	let sum = 0;
	for (let k = kits + 1; ; k++) {
		term *= meanCount / k;
		const part = (k - kits) * term;
		sum += part;
		if (part <= sum * Number.EPSILON) return sum;
	}
}

/** Chance that a Poisson count is at least `kits`. */
export function chanceAtLeast(kits: number, meanCount: number): number {
	if (kits <= 0) return 1;
	const { first, chance } = poisson(meanCount);
	if (kits > first + chance.length - 1)
		return expectedBeyond(kits - 1, meanCount) - expectedBeyond(kits, meanCount);
	let sum = 0;
	for (let i = chance.length - 1; i >= Math.max(0, kits - first); i--) sum += chance[i] as number;
	return sum;
}
