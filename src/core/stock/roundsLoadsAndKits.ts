import type { Counts } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poissonTerms } from "../counts/poisson.ts";
import { spread } from "../counts/spread.ts";
import { sumOf } from "../counts/sumOf.ts";
import { MOST_OBJECTS, memoize } from "../memoize.ts";

/** Chances below this are not followed. */
const SMALLEST = 1e-18;

/** What some rounds come to together. */
export interface Numbers {
	/** That run. */
	readonly rounds: number;
	/** Beyond the first of each round; all of them where rounds are not followed. */
	readonly moreLoads: number;
	readonly kits: number;
}

/** What use goes by. */
export interface GoesBy {
	readonly rounds: boolean;
	readonly loads: boolean;
	readonly kits: boolean;
}

/** The largest numbers that are followed; 0 where use does not go by them. */
export const mostNumbers = memoize(
	(means: readonly number[], kitsInLoad: number, goesBy: GoesBy): Numbers => {
		const last = ({ first, chance }: Counts) => first + chance.length - 1;
		const all = means.reduce((sum, mean) => sum + mean, 0);
		const loads = (mean: number) =>
			spread(groupsOf(poissonTerms(mean), kitsInLoad), (count) =>
				goesBy.rounds ? Math.max(0, count - 1) : count,
			);
		return {
			rounds: goesBy.rounds ? means.length : 0,
			moreLoads: goesBy.loads ? last(sumOf(means.map(loads))) : 0,
			kits: goesBy.kits ? last(poissonTerms(all)) : 0,
		};
	},
	(means, kitsInLoad, { rounds, loads, kits }) => [rounds, loads, kits, kitsInLoad, ...means],
	MOST_OBJECTS,
);

/** Mean kits of each round at a level of births, and how much the level weighs. */
export interface MeansAtLevel {
	readonly means: readonly number[];
	readonly weight: number;
}

/**
 * How likely each use is of what goes by rounds that run, loads, kits and descalings: by how many
 * of each the rounds come to together. Exact however many steps it is counted in.
 *
 * @param levels of births that the rounds share; one where it is known
 * @param most as `mostNumbers` gives them for the highest level
 * @param useOf in steps
 * @param limit use beyond it may be left out
 */
export function roundsLoadsAndKits(
	levels: readonly MeansAtLevel[],
	kitsInLoad: number,
	most: Numbers,
	useOf: (numbers: Numbers) => number,
	limit = Number.POSITIVE_INFINITY,
): Counts {
	const { uses, chance } = likelyUses(levels, kitsInLoad, most, useOf);
	return spread({ first: 0, chance }, (i) => uses[i] as number, limit);
}

/** The use of each of the numbers that the rounds may come to, at the place of its chance: in any order, some the same. */
export function likelyUses(
	levels: readonly MeansAtLevel[],
	kitsInLoad: number,
	most: Numbers,
	useOf: (numbers: Numbers) => number,
): { uses: Float64Array; chance: Float64Array } {
	const [only] = levels as readonly [MeansAtLevel];
	const { at, chance } =
		levels.length === 1
			? numbersAsPlanned(only.means, kitsInLoad, most)
			: numbersAtLevels(levels, kitsInLoad, most);
	const { perLoad, perRound } = places(most);
	const uses = new Float64Array(at.length);
	for (let i = 0; i < at.length; i++) {
		const place = at[i] as number;
		const rounds = Math.floor(place / perRound);
		const inRound = place - rounds * perRound;
		const moreLoads = Math.floor(inRound / perLoad);
		uses[i] = useOf({ rounds, moreLoads, kits: inRound - moreLoads * perLoad });
	}
	return { uses, chance };
}

/** Numbers that the rounds may come to, and how likely: the same for all items, in whatever steps. */
interface LikelyNumbers {
	/** Their places in a list of all. */
	readonly at: Int32Array;
	readonly chance: Float64Array;
}

/** Mostly of the rounds of one day, which are few. */
const numbersAsPlanned = memoize(
	(means: readonly number[], kitsInLoad: number, most: Numbers) =>
		possibleNumbers(followed(means, kitsInLoad, most)),
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
const numbersAtLevels = memoize(
	(levels: readonly MeansAtLevel[], kitsInLoad: number, most: Numbers) => {
		const all = noNumbers(most);
		const ofLevel = noNumbers(most);
		for (const { means, weight } of levels) {
			followed(means, kitsInLoad, most, ofLevel);
			for (let at = 0; at < all.length; at++)
				all[at] = (all[at] as number) + weight * (ofLevel[at] as number);
		}
		return possibleNumbers(all);
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
function places({ moreLoads, kits }: Numbers) {
	const perLoad = kits + 1;
	return { perLoad, perRound: perLoad * (moreLoads + 1) };
}

function noNumbers(most: Numbers): Float64Array {
	return new Float64Array((most.rounds + 1) * places(most).perRound);
}

function possibleNumbers(chances: Float64Array): LikelyNumbers {
	let possible = 0;
	for (const chance of chances) if (chance >= SMALLEST) possible++;
	const at = new Int32Array(possible);
	const likely = new Float64Array(possible);
	for (let place = 0, i = 0; i < possible; place++) {
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
