import { poisson } from "../counts/poisson.ts";
import { MOST_OBJECTS, memoize } from "../memoize.ts";
import { cappedUses } from "./cappedUses.ts";
import { type RenewalStep, renews } from "./renewalSteps.ts";

/** More states than this take too long; then only the oldest kits are followed. */
const MOST_STATES = 3100;

/** How many ways there are for `kits` kits to end on `ends` days. */
function waysToEnd(kits: number, ends: number): number {
	let ways = 1;
	for (let i = 1; i <= kits; i++) ways = (ways * (ends - 1 + i)) / i;
	return ways;
}

export function canFollowEveryKit(kits: number, ends: number): boolean {
	return waysToEnd(kits, ends) <= MOST_STATES;
}

/** How likely each combination of last days is: every kit is followed, exactly. */
export class EveryKitsEnd {
	readonly #kits: number;
	/** For each step of a day, how likely each number of uses is, and where they lead. */
	readonly #ways: Map<RenewalStep, { readonly uses: Float64Array; readonly moves: Moves[] }>;
	#chance: Float64Array;
	#after: Float64Array;
	/** By the kits used: how likely each combination is once one more is; with all used there is one. */
	readonly #left: readonly Float64Array[];

	constructor(kits: number, ends: number, steps: readonly RenewalStep[]) {
		this.#kits = kits;
		this.#ways = new Map(
			steps.map((step) => {
				const { endsBy, spreadBy, target, midnight } = step;
				const uses = cappedUses(kits, poisson(step.uses));
				return [step, { uses, moves: movesOf(kits, ends, endsBy, spreadBy, target, midnight) }];
			}),
		);
		this.#chance = Float64Array.from(statesOf(kits, ends), (counts) => apart(counts));
		this.#after = new Float64Array(this.#chance.length);
		this.#left = Array.from(
			{ length: kits + 1 },
			(_, used) => new Float64Array(statesOf(Math.max(0, kits - used - 1), ends).length),
		);
	}

	/** Fills `given` (see `RenewalsOfDay`) where any are renewed; gives back how likely each number of uses was. */
	go(step: RenewalStep, given: Float64Array): Float64Array {
		const kits = this.#kits;
		const { uses, moves } = this.#ways.get(step) as { uses: Float64Array; moves: Moves[] };
		const renewing = renews(step);
		const most = renewing ? kits : uses.findLastIndex((chance) => chance > 0);
		const before = this.#chance;
		const after = this.#after.fill(0);
		if (renewing) given.fill(0);
		let left = before;
		for (let u = 0; u <= most; u++) {
			const { next, renewed, less } = moves[u] as Moves;
			const likely = uses[u] as number;
			const fewer = (this.#left[u] as Float64Array).fill(0);
			const row = u * (kits + 1);
			for (let state = 0; state < left.length; state++) {
				const chance = left[state] as number;
				if (chance === 0) continue;
				const to = next[state] as number;
				after[to] = (after[to] as number) + chance * likely;
				const at = less[state] as number;
				fewer[at] = (fewer[at] as number) + chance;
				if (!renewing) continue;
				const inRow = row + (renewed[state] as number);
				given[inRow] = (given[inRow] as number) + chance;
			}
			left = fewer;
		}
		this.#after = before;
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

/** The place of each combination. */
const placesOf = memoize(
	(kits: number, ends: number) =>
		new Map(statesOf(kits, ends).map((counts, place) => [counts.join(), place])),
);

/** Where the combinations of the kits that were not used lead. */
interface Moves {
	/** Once those used are ready again: a combination of all kits. */
	readonly next: Uint16Array;
	/** Kits that join unused. */
	readonly renewed: Uint8Array;
	/** With one use more, of the oldest: a combination of one kit fewer. */
	readonly less: Uint16Array;
}

/** By the number of kits used. */
const movesOf = memoize(
	(
		kits: number,
		ends: number,
		endsBy: number,
		spreadBy: number,
		target: number,
		midnight: RenewalStep["midnight"],
	): Moves[] => {
		const places = placesOf(kits, ends);
		return Array.from({ length: kits + 1 }, (_, used) => {
			const states = statesOf(kits - used, ends);
			const next = new Uint16Array(states.length);
			const renewed = new Uint8Array(states.length);
			states.forEach((counts, state) => {
				let left = midnight === "before" ? dayLater(counts) : [...counts];
				const joining = join(left, endsBy, spreadBy);
				if (midnight === "after") left = dayLater(left);
				left[target] = (left[target] as number) + used + joining;
				next[state] = places.get(left.join()) as number;
				renewed[state] = joining;
			});
			return { next, renewed, less: lessOne(kits - used, ends) };
		});
	},
	undefined,
	MOST_OBJECTS,
);

/** Where one use leads each combination of some kits. */
const lessOne = memoize((kits: number, ends: number): Uint16Array => {
	if (kits === 0) return new Uint16Array(1);
	const fewer = placesOf(kits - 1, ends);
	return Uint16Array.from(
		statesOf(kits, ends),
		(counts) => fewer.get(withoutOldest(counts).join()) as number,
	);
});

function withoutOldest(counts: readonly number[]): number[] {
	const oldest = counts.findIndex((count) => count > 0);
	return counts.with(oldest, (counts[oldest] as number) - 1);
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
