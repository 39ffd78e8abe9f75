import { poisson } from "../counts/poisson.ts";
import { memoize } from "../memoize.ts";
import { cappedUses } from "./cappedUses.ts";
import type { RenewalStep } from "./renewalSteps.ts";

/** More states than this take too long; then only the oldest kits are followed. */
const MOST_STATES = 3100;

/** How many ways there are for `kits` kits to end on `ends` days. */
function waysToEnd(kits: number, ends: number): number {
	let ways = 1;
	for (let i = 1; i <= kits && ways <= MOST_STATES; i++) ways = (ways * (ends - 1 + i)) / i;
	return ways;
}

export function canFollowEveryKit(kits: number, ends: number): boolean {
	return waysToEnd(kits, ends) <= MOST_STATES;
}

/** How likely each combination of last days is: every kit is followed, exactly. */
export class EveryKitsEnd {
	readonly #kits: number;
	readonly #ends: number;
	#chance: Float64Array;

	constructor(kits: number, ends: number) {
		this.#kits = kits;
		this.#ends = ends;
		this.#chance = Float64Array.from(statesOf(kits, ends), (counts) => apart(counts));
	}

	/** Fills `given` (see `RenewalsOfDay`); gives back how likely each number of uses was. */
	go(step: RenewalStep, given: Float64Array): Float64Array {
		const kits = this.#kits;
		const { endsBy, spreadBy, target, midnight } = step;
		const { next, renewed } = moves(kits, this.#ends, endsBy, spreadBy, target, midnight);
		const uses = cappedUses(kits, poisson(step.uses));
		const before = this.#chance;
		const after = new Float64Array(before.length);
		given.fill(0);
		for (let state = 0, move = 0; state < before.length; state++) {
			const chance = before[state] as number;
			for (let u = 0; u <= kits; u++, move++) {
				const to = next[move] as number;
				const row = u * (kits + 1) + (renewed[move] as number);
				after[to] = (after[to] as number) + chance * (uses[u] as number);
				given[row] = (given[row] as number) + chance;
			}
		}
		this.#chance = after;
		return uses;
	}
}

/** To begin with: each kit ends on any of the days, by itself. */
function apart(counts: readonly number[]): number {
	let chance = 1;
	let kits = 0;
	for (const count of counts) for (let n = 1; n <= count; n++) chance *= ++kits / n / counts.length;
	return chance;
}

/** All combinations: for each, how many kits end on each day. */
const statesOf = memoize((kits: number, ends: number) => {
	const states: number[][] = [];
	const fill = (counts: number[], left: number) => {
		if (counts.length === ends - 1) states.push([...counts, left]);
		else for (let n = 0; n <= left; n++) fill([...counts, n], left - n);
	};
	fill([], kits);
	return states;
});

/** Where each combination leads with each number of uses, and how many kits join unused. */
const moves = memoize(
	(
		kits: number,
		ends: number,
		endsBy: number,
		spreadBy: number,
		target: number,
		midnight: RenewalStep["midnight"],
	) => {
		const states = statesOf(kits, ends);
		const places = new Map(states.map((counts, i) => [counts.join(), i]));
		const next = new Uint16Array(states.length * (kits + 1));
		const renewed = new Uint8Array(next.length);
		states.forEach((counts, state) => {
			for (let u = 0; u <= kits; u++) {
				let left = withoutOldest(counts, u);
				if (midnight === "before") left = dayLater(left);
				const joining = join(left, endsBy, spreadBy);
				if (midnight === "after") left = dayLater(left);
				left[target] = (left[target] as number) + u + joining;
				next[state * (kits + 1) + u] = places.get(left.join()) as number;
				renewed[state * (kits + 1) + u] = joining;
			}
		});
		return { next, renewed };
	},
);

function withoutOldest(counts: readonly number[], used: number): number[] {
	let toUse = used;
	return counts.map((count) => {
		const taken = Math.min(count, toUse);
		toUse -= taken;
		return count - taken;
	});
}

/** What ended before today is counted to today. */
function dayLater([first = 0, second = 0, ...others]: readonly number[]): number[] {
	return [first + second, ...others, 0];
}

/** Takes out what joins a round, and says how many. */
function join(counts: number[], endsBy: number, spreadBy: number): number {
	let joining = 0;
	for (let end = 0; end <= Math.min(endsBy, counts.length - 1); end++) {
		joining += counts[end] as number;
		counts[end] = 0;
	}
	const oldest = counts.findIndex((count) => count > 0);
	const together = counts[oldest] ?? 0;
	if (together < 2 || oldest > spreadBy) return joining;
	counts[oldest] = together - 1;
	return joining + 1;
}
