import { memoize } from "../memoize.ts";
import { poissonTerms } from "./poisson.ts";

/**
 * E[(N − c)+] of a Poisson count N for c = 0, 1, … `most`: how much of it, on average,
 * goes beyond c.
 *
 * Added up from the far end, so that what is tiny stays exact.
 *
 * @example beyondEach(1, 0.5) // 0.5, 0.1065
 */
export function beyondEach(most: number, meanCount: number): Float64Array {
	const { first, chance } = terms(most, meanCount);
	const beyond = new Float64Array(most + 1);
	let more = 0;
	let sum = 0;
	for (let c = first + chance.length - 1; c >= 0; c--) {
		// more: the chance of more than c.
		sum += more;
		if (c <= most) beyond[c] = sum;
		more += chance[c - first] ?? 0;
	}
	return beyond;
}

/** The same for one number alone, without a list of all. */
export function beyondOne(count: number, meanCount: number): number {
	if (meanCount >= MODERATE) return beyondEach(count, meanCount)[count] as number;
	const far = lastTerm(count, meanCount);
	if (termsRoom.length <= far) termsRoom = new Float64Array(2 * far);
	firstTerms(termsRoom, far, meanCount);
	let more = 0;
	let sum = 0;
	for (let c = far; c >= count; c--) {
		sum += more;
		more += termsRoom[c] as number;
	}
	return sum;
}

let termsRoom = new Float64Array(256);

/** Less far nothing is worked out ahead. */
const LEAST_FAR = 60;

/** How far to work out for `most` and those asked next: numbers of kits are tried one after the other. */
function farFor(most: number): number {
	let far = LEAST_FAR;
	while (far < most) far = Math.ceil(1.5 * far);
	return far;
}

/** The same, to `most` or further, which is known again for rounds that are alike. */
export function beyondAsFarAs(most: number, meanCount: number): Float64Array {
	return knownBeyond(farFor(most), meanCount);
}

const knownBeyond = memoize(beyondEach, (most, meanCount) => [meanCount, most], 512);

/** The chance that a Poisson count is at least c, for c = 0, 1, … `most`. */
export function atLeastEach(most: number, meanCount: number): Float64Array {
	const { first, chance } = terms(most, meanCount);
	const chances = new Float64Array(first + chance.length);
	chances[0] = 1;
	let sum = 0;
	for (let c = chances.length - 1; c > 0; c--) {
		sum += chance[c - first] ?? 0;
		chances[c] = sum;
	}
	return chances.subarray(0, most + 1);
}

/** Up to this mean the chance of 0 is a number that all others can be worked out from. */
const MODERATE = 600;

/** A Poisson count's chances, far enough that those beyond `most` keep their own digits. */
function terms(most: number, meanCount: number) {
	if (meanCount < MODERATE) {
		const far = lastTerm(most, meanCount);
		const chance = new Float64Array(far + 1);
		firstTerms(chance, far, meanCount);
		return { first: 0, chance };
	}
	const wanted = most + BEYOND_MOST + Math.ceil(meanCount);
	const counts = poissonTerms(meanCount);
	const last = counts.first + counts.chance.length - 1;
	if (last >= wanted) return counts;
	const chance = new Float64Array(wanted - counts.first + 1);
	chance.set(counts.chance);
	for (let k = last + 1; k <= wanted; k++)
		chance[k - counts.first] = ((chance[k - 1 - counts.first] as number) * meanCount) / k;
	return { first: counts.first, chance };
}

const BEYOND_MOST = 12;

function lastTerm(most: number, meanCount: number): number {
	return most + BEYOND_MOST + Math.ceil(meanCount) + Math.ceil(8 * Math.sqrt(meanCount));
}

function firstTerms(chance: Float64Array, far: number, meanCount: number): void {
	chance[0] = Math.exp(-meanCount);
	for (let k = 1; k <= far; k++) chance[k] = ((chance[k - 1] as number) * meanCount) / k;
}
