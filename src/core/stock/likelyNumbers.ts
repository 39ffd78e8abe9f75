import { poissonTerms } from "../counts/poisson.ts";
import { MOST_OBJECTS, memoize } from "../memoize.ts";
import type { Numbers } from "./mostNumbers.ts";

/** Chances below this are not followed. */
const SMALLEST = 1e-18;

/** Mean kits of each round at a level of births, and how much the level weighs. */
export interface MeansAtLevel {
	readonly means: readonly number[];
	readonly weight: number;
}

/** Numbers that the rounds may come to, and how likely: the same for all items, in whatever steps. */
export interface LikelyNumbers {
	/** Their places in a list of all. */
	readonly at: Int32Array;
	readonly chance: Float64Array;
}

/** Mostly of the rounds of one day, which are few. */
export const numbersAsPlanned = memoize(
	(means: readonly number[], kitsInLoad: number, most: Numbers) =>
		possibleNumbers(followed(means, kitsInLoad, most), spansOf(kitsInLoad, most)),
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
		const all = noNumbers(most);
		const ofLevel = noNumbers(most);
		const spans = spansOf(kitsInLoad, most);
		for (const { means, weight } of levels) {
			followed(means, kitsInLoad, most, ofLevel);
			for (const { from, to } of spans)
				for (let at = from; at < to; at++)
					all[at] = (all[at] as number) + weight * (ofLevel[at] as number);
		}
		return possibleNumbers(all, spans);
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

/** How far apart numbers stand in a list of all of them. */
export function places({ moreLoads, kits }: Numbers) {
	const perLoad = kits + 1;
	return { perLoad, perRound: perLoad * (moreLoads + 1) };
}

function noNumbers(most: Numbers): Float64Array {
	return new Float64Array((most.rounds + 1) * places(most).perRound);
}

/** Places next to each other. */
interface Span {
	readonly from: number;
	readonly to: number;
}

/** Where numbers can be: with so many rounds and loads most numbers of kits cannot. */
function spansOf(kitsInLoad: number, most: Numbers): Span[] {
	const { perLoad, perRound } = places(most);
	const spans: Span[] = [];
	for (let rounds = 0; rounds <= most.rounds; rounds++)
		for (let moreLoads = 0; moreLoads <= most.moreLoads; moreLoads++) {
			const [fewest, fullest] = kitsBetween(rounds, moreLoads, kitsInLoad, most);
			const none = rounds * perRound + moreLoads * perLoad;
			const to = none + Math.min(fullest, most.kits) + 1;
			if (fewest <= most.kits) spans.push({ from: none + fewest, to });
		}
	return spans;
}

function possibleNumbers(chances: Float64Array, spans: readonly Span[]): LikelyNumbers {
	let possible = 0;
	for (const { from, to } of spans)
		for (let place = from; place < to; place++)
			if ((chances[place] as number) >= SMALLEST) possible++;
	const at = new Int32Array(possible);
	const likely = new Float64Array(possible);
	let i = 0;
	for (const { from, to } of spans)
		for (let place = from; place < to; place++) {
			const chance = chances[place] as number;
			if (chance < SMALLEST) continue;
			at[i] = place;
			likely[i++] = chance;
		}
	return { at, chance: likely };
}

/** One round after the other. @param chances where it is followed, at the places of the numbers */
function followed(
	means: readonly number[],
	kitsInLoad: number,
	most: Numbers,
	chances = noNumbers(most),
): Float64Array {
	const { perLoad, perRound } = places(most);
	chances.fill(0);
	chances[0] = 1;
	const ofRun = most.rounds === 0 ? 0 : perRound;
	// As many as there may be so far.
	let [mostLoads, mostKits] = [0, 0];
	means.forEach((mean, before) => {
		const { idle, runs } = roundOf(mean, kitsInLoad, most);
		const kitsOfRun = Int32Array.from(runs, (run) => run.kits);
		const to = Int32Array.from(runs, (run) => ofRun + run.moreLoads * perLoad + run.kits);
		const likely = Float64Array.from(runs, (run) => run.chance);
		const likeliest = Float64Array.from(runs, (run) => run.likeliest);
		const loadsFit = Array.from(
			{ length: mostLoads + 1 },
			(_, loads) => runs.filter((run) => run.moreLoads <= most.moreLoads - loads).length,
		);
		// The largest numbers first: a round is added to none that it was added to already.
		for (let rounds = Math.min(before, most.rounds); rounds >= 0; rounds--)
			for (let moreLoads = mostLoads; moreLoads >= 0; moreLoads--) {
				const [fewest, fullest] = kitsBetween(rounds, moreLoads, kitsInLoad, most);
				for (let kits = Math.min(mostKits, fullest); kits >= fewest; kits--) {
					const at = rounds * perRound + moreLoads * perLoad + kits;
					const chance = chances[at] as number;
					if (chance < SMALLEST) continue;
					let fit = loadsFit[moreLoads] as number;
					while (fit > 0 && (kitsOfRun[fit - 1] as number) > most.kits - kits) fit--;
					for (let i = 0; i < fit && chance * (likeliest[i] as number) >= SMALLEST; i++) {
						const next = at + (to[i] as number);
						chances[next] = (chances[next] as number) + chance * (likely[i] as number);
					}
					chances[at] = chance * idle;
				}
			}
		const largest = runs.at(-1);
		mostLoads = Math.min(most.moreLoads, mostLoads + (largest?.moreLoads ?? 0));
		mostKits = Math.min(most.kits, mostKits + (largest?.kits ?? 0));
	});
	return chances;
}

/** The fewest and the most kits that so many rounds and loads may have; any number where one of them is not followed. */
function kitsBetween(
	rounds: number,
	moreLoads: number,
	kitsInLoad: number,
	most: Numbers,
): [number, number] {
	if (most.kits === 0) return [0, 0];
	const loads = rounds + moreLoads;
	const fewest = most.rounds === 0 ? loads : rounds + kitsInLoad * moreLoads;
	return [fewest, most.moreLoads === 0 ? most.kits : kitsInLoad * loads];
}

/** What a round that runs adds to the numbers that are followed. */
interface Run {
	readonly moreLoads: number;
	readonly kits: number;
	readonly chance: number;
	/** Chance of the likeliest of this run and those with more kits. */
	readonly likeliest: number;
}

/** From few kits to many. */
function roundOf(mean: number, kitsInLoad: number, most: Numbers): { idle: number; runs: Run[] } {
	const { first, chance } = poissonTerms(mean);
	const ofRound = most.rounds === 0 ? 0 : 1;
	const runs: Run[] = [];
	let likeliest = 0;
	for (let kits = first + chance.length - 1; kits >= Math.max(1, first); kits--) {
		const adds = {
			moreLoads: most.moreLoads === 0 ? 0 : Math.ceil(kits / kitsInLoad) - ofRound,
			kits: most.kits === 0 ? 0 : kits,
		};
		const more = runs.at(-1);
		const isSame = more?.moreLoads === adds.moreLoads && more.kits === adds.kits;
		const sum = (chance[kits - first] as number) + (isSame ? more.chance : 0);
		likeliest = Math.max(likeliest, sum);
		if (isSame) runs.pop();
		runs.push({ ...adds, chance: sum, likeliest });
	}
	return { idle: first === 0 ? (chance[0] as number) : 0, runs: runs.reverse() };
}
