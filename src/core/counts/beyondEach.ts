import { poisson } from "./poisson.ts";

/**
 * E[(N − c)+] of a Poisson count N for c = 0, 1, … `most`: how much of it, on average,
 * goes beyond c.
 *
 * Added up from the far end, so that what is tiny stays exact.
 *
 * @example beyondEach(1, 0.5) // 0.5, 0.1065
 */
export function beyondEach(most: number, meanCount: number): Float64Array {
	const beyond = new Float64Array(most + 1);
	if (meanCount === 0) return beyond;
	const { first, chance } = terms(most, meanCount);
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

/** The chance that a Poisson count is at least c, for c = 0, 1, … `most`. */
export function atLeastEach(most: number, meanCount: number): Float64Array {
	const chances = new Float64Array(most + 1);
	chances[0] = 1;
	if (meanCount === 0) return chances;
	const { first, chance } = terms(most, meanCount);
	let sum = 0;
	for (let c = first + chance.length - 1; c > 0; c--) {
		sum += chance[c - first] ?? 0;
		if (c <= most) chances[c] = sum;
	}
	return chances;
}

/** A Poisson count's chances, far enough that those beyond `most` keep their own digits. */
function terms(most: number, meanCount: number) {
	const counts = poisson(meanCount);
	const last = counts.first + counts.chance.length - 1;
	const wanted = most + 12 + Math.ceil(meanCount);
	if (last >= wanted) return counts;
	const chance = new Float64Array(wanted - counts.first + 1);
	chance.set(counts.chance);
	for (let k = last + 1; k <= wanted; k++)
		chance[k - counts.first] = ((chance[k - 1 - counts.first] as number) * meanCount) / k;
	return { first: counts.first, chance };
}
