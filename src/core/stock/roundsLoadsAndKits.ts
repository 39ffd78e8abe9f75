import type { Counts } from "../counts/counts.ts";
import { spread } from "../counts/spread.ts";
import type { MeansAtLevel } from "./followRounds.ts";
import { numbersAsPlanned, numbersAtLevels, places } from "./likelyNumbers.ts";
import type { Numbers } from "./mostNumbers.ts";

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
