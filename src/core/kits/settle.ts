import type { RenewalStep } from "./renewalSteps.ts";
import { tendsTo } from "./tendsTo.ts";

/** The last days of kits, which go on step by step. */
export interface Chain {
	/** How many lists of chances the days to come hang on. */
	readonly lists: number;
	/** A copy of them all, one after the other. */
	chances(): Float64Array;
	/** Goes on from others; those below none count as none. */
	goOnFrom(chances: Float64Array): void;
	/**
	 * Goes on by a step; gives back how likely each number of uses was.
	 *
	 * @param given filled (see `RenewalsOfDay`) where any are renewed; where it is left out, uses that hardly ever come are too
	 */
	go(step: RenewalStep, given?: Float64Array): Float64Array;
}

const MOST_STRETCHES = 40;
/** It has settled where the chances of a list change by less than this, all together. */
const SETTLED = 5e-3;
/** After so many stretches it goes on from what they tend to. */
const GUESSED_AFTER = 4;
/** A guess after which it changes by more than this part of what it did after the one before is no help. */
const HELPS = 0.9;

/** Goes on day after day until a stretch of days ends nearly as it began, or guesses do not bring it nearer. */
export function settle(chain: Chain, steps: readonly RenewalStep[], days: number): void {
	let all = [chain.chances()];
	let ofGuess = Number.POSITIVE_INFINITY;
	for (let stretch = 0; stretch < MOST_STRETCHES; stretch++) {
		for (let day = 0; day < days; day++) for (const step of steps) chain.go(step);
		const now = chain.chances();
		const changed = change(all.at(-1) as Float64Array, now) / chain.lists;
		if (changed <= SETTLED) return;
		if (all.length === 1) {
			if (changed > HELPS * ofGuess) return;
			ofGuess = changed;
		}
		all.push(now);
		if (all.length <= GUESSED_AFTER) continue;
		chain.goOnFrom(tendsTo(all));
		all = [chain.chances()];
	}
}

function change(before: Float64Array, now: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < now.length; i++) sum += Math.abs((now[i] as number) - (before[i] as number));
	return sum;
}
