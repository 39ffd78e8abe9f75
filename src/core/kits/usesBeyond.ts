import { beyondEach } from "../counts/beyondEach.ts";
import { memoize } from "../memoize.ts";

/**
 * Mean uses beyond 0, 1, … kits, of a Poisson count: to `most` kits, or as far as any could be
 * seen (10⁻³⁵ are not). Of hundreds of kits looked at, few are ever needed in one round.
 */
export function usesBeyond(most: number, meanUses: number): Float64Array {
	const seen = Math.ceil(meanUses + LEAST_FAR + DEVIATIONS * Math.sqrt(meanUses));
	return knownBeyond(Math.min(most, seen), meanUses);
}

/** Mean uses beyond so many kits; none where nothing was worked out. */
export function beyondOf(uses: Float64Array, kits: number): number {
	return kits < uses.length ? (uses[kits] as number) : 0;
}

const LEAST_FAR = 60;
const DEVIATIONS = 12;

/** Other hours for one round leave the others as they are: nine of ten lists are asked again. A list takes half a kilobyte or more. */
const MOST_KNOWN = 8192;
const knownBeyond = memoize(beyondEach, (most, meanUses) => [most, meanUses], MOST_KNOWN);
