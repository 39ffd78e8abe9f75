import { type Counts, chanceAtMost } from "../counts/counts.ts";
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
export function withTheRest(used: Counts, size: number, use: UseInputs): Counts {
	const missing = leftOut(used);
	if (missing === 0) return used;
	const { first, chance } = used;
	const end = first + chance.length;
	const about = aboutUsed(use, size);
	const rest = about.chance.subarray(Math.max(0, end - about.first));
	const beyond = rest.reduce((sum, each) => sum + each, 0);
	const from = Math.max(end, about.first) - first;
	const all = new Float64Array(from + Math.max(1, rest.length));
	all.set(chance);
	for (let i = 0; i < rest.length; i++) all[from + i] = ((rest[i] as number) / beyond) * missing;
	// What nothing is known of comes next.
	if (beyond === 0) all[from] = missing;
	return { first, chance: all };
}

/** How likely what was left out is; 0 where it cannot be seen. */
export function leftOut(used: Counts): number {
	const missing = 1 - chanceAtMost(used, Number.POSITIVE_INFINITY);
	return missing < HARDLY ? 0 : missing;
}
