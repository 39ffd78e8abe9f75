import { MOST_OBJECTS, memoize } from "../memoize.ts";
import { followRounds, type MeansAtLevel, SMALLEST } from "./followRounds.ts";
import type { Numbers } from "./mostNumbers.ts";
import { type SpansOfNumbers, spansOfNumbers } from "./spansOfNumbers.ts";

/** Numbers that the rounds may come to, and how likely: the same for all items, in whatever steps. */
export interface LikelyNumbers {
	/** Their places in a list of all. */
	readonly at: Int32Array;
	readonly chance: Float64Array;
}

/** Mostly of the rounds of one day, which are few. */
export const numbersAsPlanned = memoize(
	(means: readonly number[], kitsInLoad: number, most: Numbers) => {
		const spans = spansOfNumbers(kitsInLoad, most);
		const all = new Float64Array(spans.numbers);
		followRounds({ means, weight: 1 }, kitsInLoad, most, spans, all);
		return possibleNumbers(all, most, spans);
	},
	(means, kitsInLoad, { rounds, moreLoads, kits }) => [
		kitsInLoad,
		rounds,
		moreLoads,
		kits,
		...means,
	],
	4 * MOST_OBJECTS,
);

/** Of days that are asked for by many items, as one list of levels. */
export const numbersAtLevels = memoize(
	(levels: readonly MeansAtLevel[], kitsInLoad: number, most: Numbers) => {
		const spans = spansOfNumbers(kitsInLoad, most);
		const all = new Float64Array(spans.numbers);
		const ofLevel = new Float64Array(spans.numbers);
		for (const level of levels) {
			followRounds(level, kitsInLoad, most, spans, ofLevel);
			addTo(all, ofLevel);
		}
		return possibleNumbers(all, most, spans);
	},
	(levels, kitsInLoad, { rounds, moreLoads, kits }) => [
		levels,
		kitsInLoad,
		rounds,
		moreLoads,
		kits,
	],
	MOST_OBJECTS / 4,
);

function addTo(all: Float64Array, chances: Float64Array): void {
	const numbers = all.length;
	for (let i = 0; i < numbers; i++) all[i] = (all[i] as number) + (chances[i] as number);
}

/** How far apart numbers stand in a list of all of them. */
export function places({ moreLoads, kits }: Numbers) {
	const perLoad = kits + 1;
	return { perLoad, perRound: perLoad * (moreLoads + 1) };
}

function possibleNumbers(
	chances: Float64Array,
	most: Numbers,
	spans: SpansOfNumbers,
): LikelyNumbers {
	const possible = chances.reduce((count, chance) => (chance >= SMALLEST ? count + 1 : count), 0);
	const at = new Int32Array(possible);
	const likely = new Float64Array(possible);
	const { perLoad } = places(most);
	let i = 0;
	spans.none.forEach((none, span) => {
		const fullest = spans.fullest[span] as number;
		for (let kits = spans.fewest[span] as number; kits <= fullest; kits++) {
			const chance = chances[none + kits] as number;
			if (chance < SMALLEST) continue;
			at[i] = span * perLoad + kits;
			likely[i++] = chance;
		}
	});
	return { at, chance: likely };
}
