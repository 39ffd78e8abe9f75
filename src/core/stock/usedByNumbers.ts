import type { Counts } from "../counts/counts.ts";
import type { Loads } from "../rounds/loads.ts";
import { sumOfAll } from "../sumOfAll.ts";
import {
	type MeansAtLevel,
	mostNumbers,
	type Numbers,
	roundsLoadsAndKits,
} from "./roundsLoadsAndKits.ts";

/** Rates of an item counted in steps. */
export interface RatesInSteps {
	readonly perRound: number;
	readonly perLoad: readonly number[];
	readonly perKit: readonly number[];
	readonly perDescale: number;
}

/**
 * Use followed by how many rounds run and what loads and kits they make, where all kits use
 * the same and these numbers are fewer than the steps of use that would be followed otherwise.
 *
 * @param levels of births, from low to high
 * @param limit use beyond it may be left out
 */
export function usedByNumbers(
	{ perRound, perLoad, perKit, perDescale }: RatesInSteps,
	levels: readonly MeansAtLevel[],
	loads: Loads,
	every: number,
	limit: number,
): Counts | undefined {
	const [ofKit = 0] = perKit;
	const ofLoad = sumOfAll(perLoad);
	const ofKitsAlone = perRound === 0 && ofLoad === 0 && perDescale === 0;
	if (ofKitsAlone || loads.length > 1 || perKit.some((use) => use !== ofKit)) return undefined;
	const useOf = ({ rounds, moreLoads, kits }: Numbers) =>
		perRound * rounds +
		ofLoad * (rounds + moreLoads) +
		ofKit * kits +
		(perDescale === 0 ? 0 : perDescale * Math.ceil(rounds / every));
	const kitsInLoad = loads[0]?.kits ?? 1;
	const { means } = levels.at(-1) as MeansAtLevel;
	const most = mostNumbers(means, kitsInLoad, { loads: ofLoad > 0, kits: ofKit > 0 });
	const numbers = (most.rounds + 1) * (most.moreLoads + 1) * (most.kits + 1);
	// With descalings each step is followed once for each number of rounds since the last.
	const steps = useOf(most) * (perDescale === 0 ? 1 : Math.min(every, means.length));
	return numbers < steps ? roundsLoadsAndKits(levels, kitsInLoad, most, useOf, limit) : undefined;
}
