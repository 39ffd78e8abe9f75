import type { Amounts } from "../amounts.ts";
import { type Counts, chanceAtMost } from "../counts/counts.ts";
import { onceAsked } from "../onceAsked.ts";
import { aboutUsed } from "./aboutEnough.ts";
import type { UseInputs } from "./useInputs.ts";

/** So little left out cannot be seen in any result. */
const HARDLY = 1e-9;

/**
 * How likely amounts are beyond those that were followed too, so that far more than is set aside, as a whole pack may
 * be, is known to be enough: what was left out, as it is likely by the mean, variance and skewness of the use.
 *
 * @param used in steps of a size, with all of it that is enough as surely as asked
 */
export function withTheRest(used: Counts, size: number, use: UseInputs): Amounts["counts"] {
	const missing = leftOut(used);
	return missing === 0
		? used
		: { ...used, beyond: onceAsked(() => rest(used, missing, size, use)) };
}

function rest({ first, chance }: Counts, missing: number, size: number, use: UseInputs): Counts {
	const end = first + chance.length;
	const about = aboutUsed(use, size);
	const likely = about.chance.subarray(Math.max(0, end - about.first));
	let sum = 0;
	for (let i = 0; i < likely.length; i++) sum += likely[i] as number;
	// What nothing is known of comes next.
	if (sum === 0) return { first: end, chance: Float64Array.of(missing) };
	const beyond = likely.slice();
	for (let i = 0; i < beyond.length; i++) beyond[i] = ((beyond[i] as number) / sum) * missing;
	return { first: Math.max(end, about.first), chance: beyond };
}

/** How likely what was left out is; 0 where it cannot be seen. */
export function leftOut(used: Counts): number {
	const missing = 1 - chanceAtMost(used, Number.POSITIVE_INFINITY);
	return missing < HARDLY ? 0 : missing;
}
