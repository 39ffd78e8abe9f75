import type { Counts } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poissonTerms } from "../counts/poisson.ts";
import { spread } from "../counts/spread.ts";
import { sumOf } from "../counts/sumOf.ts";

/** Chances below this are not followed. */
const SMALLEST = 1e-18;

/** What some rounds come to together. */
export interface Numbers {
	/** That run. */
	readonly rounds: number;
	/** Beyond the first of each round. */
	readonly moreLoads: number;
	readonly kits: number;
}

/** The largest numbers that are followed; 0 where use does not go by them. */
export function mostNumbers(
	means: readonly number[],
	kitsInLoad: number,
	goesBy: { readonly loads: boolean; readonly kits: boolean },
): Numbers {
	const last = ({ first, chance }: Counts) => first + chance.length - 1;
	const all = means.reduce((sum, mean) => sum + mean, 0);
	return {
		rounds: means.length,
		moreLoads: goesBy.loads ? last(sumOf(means.map((mean) => moreLoads(mean, kitsInLoad)))) : 0,
		kits: goesBy.kits ? last(poissonTerms(all)) : 0,
	};
}

function moreLoads(mean: number, kitsInLoad: number): Counts {
	return spread(groupsOf(poissonTerms(mean), kitsInLoad), (loads) => Math.max(0, loads - 1));
}

/**
 * How likely each use is of what goes by rounds that run, loads, kits and descalings: by how many
 * of each the rounds come to together. Exact however many steps it is counted in.
 *
 * @param means mean kits of each round
 * @param most as `mostNumbers` gives them
 * @param useOf in steps
 * @param limit use beyond it may be left out
 */
export function roundsLoadsAndKits(
	means: readonly number[],
	kitsInLoad: number,
	most: Numbers,
	useOf: (numbers: Numbers) => number,
	limit = Number.POSITIVE_INFINITY,
): Counts {
	const perLoad = most.kits + 1;
	const perRound = perLoad * (most.moreLoads + 1);
	const chances = new Float64Array(perRound * (most.rounds + 1));
	chances[0] = 1;
	means.forEach((mean, before) => {
		const { idle, runs } = roundOf(mean, kitsInLoad, most);
		const to = Int32Array.from(runs, (run) => perRound + run.moreLoads * perLoad + run.kits);
		const likely = Float64Array.from(runs, (run) => run.chance);
		const likeliest = Float64Array.from(runs, (run) => run.likeliest);
		// The largest numbers first: a round is added to none that it was added to already.
		for (let rounds = before; rounds >= 0; rounds--)
			for (let moreLoads = most.moreLoads; moreLoads >= 0; moreLoads--) {
				const fewest = most.kits === 0 ? 0 : rounds + kitsInLoad * moreLoads;
				const loadsFit = runs.filter((run) => run.moreLoads <= most.moreLoads - moreLoads).length;
				for (let kits = most.kits; kits >= fewest; kits--) {
					const at = rounds * perRound + moreLoads * perLoad + kits;
					const chance = chances[at] as number;
					if (chance < SMALLEST) continue;
					let fit = loadsFit;
					while (fit > 0 && (runs[fit - 1] as Run).kits > most.kits - kits) fit--;
					for (let i = 0; i < fit && chance * (likeliest[i] as number) >= SMALLEST; i++) {
						const next = at + (to[i] as number);
						chances[next] = (chances[next] as number) + chance * (likely[i] as number);
					}
					chances[at] = chance * idle;
				}
			}
	});
	const possible: number[] = [];
	for (let at = 0; at < chances.length; at++)
		if ((chances[at] as number) >= SMALLEST) possible.push(at);
	return spread(
		{ first: 0, chance: Float64Array.from(possible, (at) => chances[at] as number) },
		(i) => {
			const at = possible[i] as number;
			return useOf({
				rounds: Math.floor(at / perRound),
				moreLoads: Math.floor((at % perRound) / perLoad),
				kits: at % perLoad,
			});
		},
		limit,
	);
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
	const runs: Run[] = [];
	let likeliest = 0;
	for (let kits = first + chance.length - 1; kits >= Math.max(1, first); kits--) {
		const adds = {
			moreLoads: most.moreLoads === 0 ? 0 : Math.ceil(kits / kitsInLoad) - 1,
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
