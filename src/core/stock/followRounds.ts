import { poissonTerms } from "../counts/poisson.ts";
import { ofEach } from "../ofEach.ts";
import type { Numbers } from "./mostNumbers.ts";
import type { SpansOfNumbers } from "./spansOfNumbers.ts";

/** Mean kits of each round at a level of births, and how much the level weighs. */
export interface MeansAtLevel {
	readonly means: readonly number[];
	readonly weight: number;
}

/** Chances below this are not followed, with what a level of births weighs. */
export const SMALLEST = 1e-18;

/** Numbers of kits beside each other, or of loads where kits are not followed, before a round is added to them. */
let line = new Float64Array(256);

/**
 * What rounds come to together at a level of births, one after the other.
 *
 * @param chances where it is followed, with the level's weight: span after span
 */
export function followRounds(
	{ means, weight }: MeansAtLevel,
	kitsInLoad: number,
	most: Numbers,
	{ fewest, fullest, none }: SpansOfNumbers,
	chances: Float64Array,
): void {
	const withKits = most.kits > 0;
	const longest = withKits ? most.kits : most.moreLoads;
	if (line.length <= longest) line = new Float64Array(2 * longest);
	chances.fill(0);
	chances[0] = weight;
	const perRound = most.moreLoads + 1;
	// As many as there may be so far.
	let [mostLoads, mostKits] = [0, 0];
	ofEach(means, (mean) => roundOf(mean, kitsInLoad, most)).forEach(({ idle, runs }, before) => {
		// The largest numbers first: a round is added to none that it was added to already.
		for (let rounds = Math.min(before, most.rounds); rounds >= 0; rounds--) {
			const next = most.rounds === 0 ? 0 : (rounds + 1) * perRound;
			for (let loads = withKits ? mostLoads : 0; loads >= 0; loads--) {
				const span = rounds * perRound + loads;
				const start = none[span] as number;
				let from = withKits ? (fewest[span] as number) : 0;
				let to = withKits ? Math.min(mostKits, fullest[span] as number) : mostLoads;
				while (from <= to && (chances[start + from] as number) < SMALLEST) from++;
				while (to >= from && (chances[start + to] as number) < SMALLEST) to--;
				if (from > to) continue;
				const likeliest = take(chances, start, from, to, idle);
				for (let i = 0; i < runs.length; i++) {
					const { moreLoads, kits, chance, likeliest: ofRun } = runs[i] as Run;
					const least = SMALLEST / ofRun;
					if (likeliest < least || (withKits && loads + moreLoads > most.moreLoads)) break;
					while ((line[from] as number) < least) from++;
					while ((line[to] as number) < least) to--;
					const more = withKits ? kits : moreLoads;
					const added = (none[next + loads + (withKits ? moreLoads : 0)] as number) + more;
					add(chances, added, from, Math.min(to, longest - more), chance);
				}
			}
		}
		const largest = runs.at(-1);
		mostLoads = Math.min(most.moreLoads, mostLoads + (largest?.moreLoads ?? 0));
		mostKits = Math.min(most.kits, mostKits + (largest?.kits ?? 0));
	});
}

/** Takes a line over, and leaves what of it stays where a round does not run. @returns the likeliest of its numbers */
function take(
	chances: Float64Array,
	start: number,
	from: number,
	to: number,
	idle: number,
): number {
	const taken = line;
	let likeliest = 0;
	for (let at = from; at <= to; at++) {
		const chance = chances[start + at] as number;
		taken[at] = chance;
		chances[start + at] = chance * idle;
		if (chance > likeliest) likeliest = chance;
	}
	return likeliest;
}

/** A run with a chance, after each of the numbers of a line. By itself: the engine is quick with so small a function. */
function add(chances: Float64Array, next: number, from: number, to: number, chance: number): void {
	const taken = line;
	for (let at = from; at <= to; at++)
		chances[next + at] = (chances[next + at] as number) + chance * (taken[at] as number);
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
