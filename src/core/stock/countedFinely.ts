import type { Counts } from "../counts/counts.ts";
import { amountSetAside, finerSteps, type Steps, widened } from "./commonStep.ts";

/** What the steps set aside on the safe side may be of all that is set aside. */
const MOST_OF_ALL = 0.005;

/** An amount of use, how likely each is, and the steps it is counted in. */
export interface CountedUse {
	readonly used: Counts;
	readonly steps: Steps;
	readonly setAside: number;
}

/**
 * What to set aside, in steps that are fine beside it, however much more could be used.
 *
 * Steps that share amounts are chosen by the most that is possible, which may be many times what
 * is set aside. They tell within how much of it to look: there steps are finer, and what is
 * beyond is left out, until the steps on the safe side are at most half of one in a hundred of it.
 * Where what is enough is not among the steps looked at, more of them are: what is possible
 * may be many times what is likely, and steps that nobody asks for cost the most.
 *
 * @param amounts that the use is a sum of
 * @param first the steps to begin with
 * @param count steps of what is set aside, about
 * @param used how likely each amount is, counted in steps
 */
export function countedFinely(
	amounts: readonly number[],
	confidence: number,
	first: Steps,
	count: number,
	used: (steps: Steps) => Counts,
): CountedUse {
	let steps = first;
	for (;;) {
		let counts = used(steps);
		while (steps.most < Number.POSITIVE_INFINITY && !holds(counts, confidence)) {
			steps = widened(steps);
			counts = used(steps);
		}
		const setAside = amountSetAside(counts, confidence, steps);
		if (steps.more * steps.size <= MOST_OF_ALL * setAside) return { used: counts, steps, setAside };
		steps = finerSteps(amounts, setAside, count);
	}
}

/** Whether what is set aside is among the amounts that were followed; no further than to it, of which most have far more. */
function holds({ chance }: Counts, confidence: number): boolean {
	let sum = 0;
	for (let i = 0; i < chance.length; i++) {
		sum += chance[i] as number;
		if (sum >= confidence) return true;
	}
	return false;
}
