import { memoize } from "../memoize.ts";
import { asChances } from "./asChances.ts";
import { type Moves, movesOf } from "./movesOf.ts";
import { type RenewalStep, renews } from "./renewalSteps.ts";
import type { Chain } from "./settle.ts";
import { UsesInSteps } from "./usesInSteps.ts";
import { statesOf, waysToEnd } from "./waysToEnd.ts";

/** More states than this take too long; then only the oldest kits are followed. */
const MOST_STATES = 3100;

export function canFollowEveryKit(kits: number, ends: number): boolean {
	return waysToEnd(kits, ends) <= MOST_STATES;
}

/** How likely each combination of last days is: every kit is followed, exactly. */
export class EveryKitsEnd implements Chain {
	readonly lists = 1;
	readonly #kits: number;
	readonly #ends: number;
	readonly #uses: UsesInSteps;
	#chance: Float64Array;
	#after: Float64Array;
	/** By the kits used: how likely each combination is once one more is; with all used there is one. */
	readonly #left: readonly Float64Array[];

	constructor(kits: number, ends: number) {
		this.#kits = kits;
		this.#ends = ends;
		this.#uses = new UsesInSteps(kits);
		this.#chance = apart(kits, ends).slice();
		this.#after = new Float64Array(this.#chance.length);
		this.#left = Array.from(
			{ length: kits + 1 },
			(_, used) => new Float64Array(statesOf(Math.max(0, kits - used - 1), ends).length),
		);
	}

	chances(): Float64Array {
		return this.#chance.slice();
	}

	goOnFrom(chances: Float64Array): void {
		this.#chance = asChances(chances);
	}

	go(step: RenewalStep, given?: Float64Array): Float64Array {
		const kits = this.#kits;
		const { all, likely } = this.#uses.of(step);
		const uses = given ? all : likely;
		const { endsBy, spreadBy, target, midnight, rounds } = step;
		const moves = movesOf(kits, this.#ends, endsBy, spreadBy, target, midnight, rounds ?? 1);
		const counted = renews(step) ? given?.fill(0) : undefined;
		const before = this.#chance;
		const after = this.#after.fill(0);
		let left = before;
		for (let u = 0; u < uses.length; u++) {
			const move = moves[u] as Moves;
			const fewer = (this.#left[u] as Float64Array).fill(0);
			if (counted) countRenewed(left, move, counted.subarray(u * (kits + 1)));
			passOn(left, move, uses[u] as number, after, fewer);
			left = fewer;
		}
		this.#after = before;
		this.#chance = after;
		return uses;
	}
}

/** Adds those left after some uses to where they lead, and to what one use more leaves. */
function passOn(
	left: Float64Array,
	{ next, less }: Moves,
	likely: number,
	after: Float64Array,
	fewer: Float64Array,
): void {
	const states = left.length;
	for (let state = 0; state < states; state++) {
		const chance = left[state] as number;
		const to = next[state] as number;
		after[to] = (after[to] as number) + chance * likely;
		const at = less[state] as number;
		fewer[at] = (fewer[at] as number) + chance;
	}
}

/** Adds how likely each number of kits is to join unused. */
function countRenewed(left: Float64Array, { renewed }: Moves, row: Float64Array): void {
	const states = left.length;
	for (let state = 0; state < states; state++) {
		const joining = renewed[state] as number;
		row[joining] = (row[joining] as number) + (left[state] as number);
	}
}

/** To begin with: each kit ends on any of the days, by itself. */
const apart = memoize((kits: number, ends: number) =>
	Float64Array.from(statesOf(kits, ends), (counts) => {
		let chance = 1;
		let among = 0;
		for (const count of counts) for (let n = 1; n <= count; n++) chance *= ++among / n / ends;
		return chance;
	}),
);
