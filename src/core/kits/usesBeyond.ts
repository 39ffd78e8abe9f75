import { beyondEach } from "../counts/beyondEach.ts";
import { memoize } from "../memoize.ts";

/**
 * Mean uses beyond 0, 1, … kits, of a Poisson count, as far as any could be seen (10⁻³⁵ are
 * not): of hundreds of kits looked at, few are ever needed in one round.
 *
 * Added up from the far end, so that what is tiny stays exact.
 *
 * @example usesBeyond(0.5) // 0.5, 0.1065, 0.0163, …
 */
export const usesBeyond = memoize(
	(meanUses: number): Float64Array => (meanUses < MODERATE ? ofFew(meanUses) : ofMany(meanUses)),
	undefined,
	// Other hours for one round leave the others as they are: nine of ten lists are asked again. A list takes half a kilobyte or less, of most rounds.
	8192,
);

/** Mean uses beyond so many kits; none where nothing was worked out. */
export function beyondOf(uses: Float64Array, kits: number): number {
	return kits < uses.length ? (uses[kits] as number) : 0;
}

/** Up to this mean the chance of 0 is a number that all others can be worked out from. */
const MODERATE = 600;
/** Chances from here on add up to nothing that is seen, also counted as often as uses are beyond. */
const UNSEEN = 1e-40;

const chances: number[] = [];

function ofFew(meanUses: number): Float64Array {
	let far = 0;
	for (let chance = Math.exp(-meanUses); far < meanUses || chance > UNSEEN; ) {
		chances[far++] = chance;
		chance *= meanUses / far;
	}
	const beyond = new Float64Array(far);
	let more = 0;
	let sum = 0;
	for (let kits = far - 1; kits >= 0; kits--) {
		sum += more;
		beyond[kits] = sum;
		more += chances[kits] as number;
	}
	return beyond;
}

function ofMany(meanUses: number): Float64Array {
	return beyondEach(Math.ceil(meanUses + 60 + 12 * Math.sqrt(meanUses)), meanUses);
}
