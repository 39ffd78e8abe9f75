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
	(means: readonly number[], kitsInLoad: number, most: Numbers) => {
		const spans = spansOf(kitsInLoad, most);
		return possibleNumbers(followed(means, kitsInLoad, most, spans), most, spans);
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
		const spans = spansOf(kitsInLoad, most);
		const all = new Float64Array(spans.numbers);
		const ofLevel = new Float64Array(spans.numbers);
		for (const { means, weight } of levels) {
			followed(means, kitsInLoad, most, spans, ofLevel);
			addTimes(all, ofLevel, weight);
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

function addTimes(all: Float64Array, chances: Float64Array, weight: number): void {
	const numbers = all.length;
	for (let i = 0; i < numbers; i++) all[i] = (all[i] as number) + weight * (chances[i] as number);
}

/** How far apart numbers stand in a list of all of them. */
export function places({ moreLoads, kits }: Numbers) {
	const perLoad = kits + 1;
	return { perLoad, perRound: perLoad * (moreLoads + 1) };
}

/**
 * The numbers of kits that are possible with each number of rounds and loads, which are a few
 * of all, so that only these are followed: one list after the other, by rounds and then loads.
 */
interface Spans {
	readonly fewest: Int32Array;
	/** Below the fewest where none is possible. */
	readonly fullest: Int32Array;
	/** Where no kits would stand in what is followed. */
	readonly none: Int32Array;
	/** How many are followed in all. */
	readonly numbers: number;
}

function spansOf(kitsInLoad: number, most: Numbers): Spans {
	const count = (most.rounds + 1) * (most.moreLoads + 1);
	const fewest = new Int32Array(count);
	const fullest = new Int32Array(count);
	const none = new Int32Array(count);
	let numbers = 0;
	for (let rounds = 0, span = 0; rounds <= most.rounds; rounds++)
		for (let moreLoads = 0; moreLoads <= most.moreLoads; moreLoads++, span++) {
			const [few, full] = kitsBetween(rounds, moreLoads, kitsInLoad, most);
			fewest[span] = few;
			fullest[span] = Math.min(full, most.kits);
			none[span] = numbers - few;
			numbers += Math.max(0, (fullest[span] as number) - few + 1);
		}
	return { fewest, fullest, none, numbers };
}

function possibleNumbers(chances: Float64Array, most: Numbers, spans: Spans): LikelyNumbers {
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

/** One round after the other. @param chances where it is followed, span after span */
function followed(
	means: readonly number[],
	kitsInLoad: number,
	most: Numbers,
	{ fewest, fullest, none, numbers }: Spans,
	chances = new Float64Array(numbers),
): Float64Array {
	chances.fill(0);
	chances[0] = 1;
	const perRound = most.moreLoads + 1;
	// As many as there may be so far.
	let [mostLoads, mostKits] = [0, 0];
	means.forEach((mean, before) => {
		const { idle, runs } = roundOf(mean, kitsInLoad, most);
		const kitsOfRun = Int32Array.from(runs, (run) => run.kits);
		const loadsOfRun = Int32Array.from(runs, (run) => run.moreLoads);
		const likely = Float64Array.from(runs, (run) => run.chance);
		const likeliest = Float64Array.from(runs, (run) => run.likeliest);
		const to = new Int32Array(runs.length);
		// The largest numbers first: a round is added to none that it was added to already.
		for (let rounds = Math.min(before, most.rounds); rounds >= 0; rounds--) {
			const next = most.rounds === 0 ? 0 : (rounds + 1) * perRound;
			for (let moreLoads = mostLoads, loadsFit = 0; moreLoads >= 0; moreLoads--) {
				const span = rounds * perRound + moreLoads;
				const left = most.moreLoads - moreLoads;
				while (loadsFit < to.length && (loadsOfRun[loadsFit] as number) <= left) loadsFit++;
				for (let i = 0; i < loadsFit; i++)
					to[i] =
						(none[next + moreLoads + (loadsOfRun[i] as number)] as number) +
						(kitsOfRun[i] as number);
				const few = fewest[span] as number;
				for (let kits = Math.min(mostKits, fullest[span] as number); kits >= few; kits--) {
					const at = (none[span] as number) + kits;
					const chance = chances[at] as number;
					if (chance < SMALLEST) continue;
					let fit = loadsFit;
					while (fit > 0 && (kitsOfRun[fit - 1] as number) > most.kits - kits) fit--;
					const least = SMALLEST / chance;
					while (fit > 0 && (likeliest[fit - 1] as number) < least) fit--;
					addRuns(chances, kits, to, likely, fit, chance);
					chances[at] = chance * idle;
				}
			}
		}
		const largest = runs.at(-1);
		mostLoads = Math.min(most.moreLoads, mostLoads + (largest?.moreLoads ?? 0));
		mostKits = Math.min(most.kits, mostKits + (largest?.kits ?? 0));
	});
	return chances;
}

/** By itself, because the engine is quick with so small a function whatever was done before. */
function addRuns(
	chances: Float64Array,
	kits: number,
	to: Int32Array,
	likely: Float64Array,
	fit: number,
	chance: number,
): void {
	for (let i = 0; i < fit; i++) {
		const sum = kits + (to[i] as number);
		chances[sum] = (chances[sum] as number) + chance * (likely[i] as number);
	}
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
