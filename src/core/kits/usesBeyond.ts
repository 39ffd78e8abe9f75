import { beyondEach } from "../counts/beyondEach.ts";

/**
 * Mean uses beyond 0, 1, … kits, of a Poisson count: to `most` kits, or as far as any could be
 * seen (10⁻³⁵ are not). Of hundreds of kits looked at, few are ever needed in one round.
 */
export function usesBeyond(most: number, meanUses: number): Float64Array {
	const seen = Math.ceil(meanUses + LEAST_FAR + DEVIATIONS * Math.sqrt(meanUses));
	return beyondEach(Math.min(most, seen), meanUses);
}

/** Mean uses beyond so many kits; none where nothing was worked out. */
export function beyondOf(uses: Float64Array, kits: number): number {
	return kits < uses.length ? (uses[kits] as number) : 0;
}

const LEAST_FAR = 60;
const DEVIATIONS = 12;
