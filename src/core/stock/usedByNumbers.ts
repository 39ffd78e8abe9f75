import type { Counts } from "../counts/counts.ts";
import type { Loads } from "../rounds/loads.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { MeansAtLevel } from "./followRounds.ts";
import { mostNumbers, type Numbers } from "./mostNumbers.ts";
import { roundsLoadsAndKits } from "./roundsLoadsAndKits.ts";

/** Rates of an item counted in steps. */
export interface RatesInSteps {
	readonly perRound: number;
	readonly perLoad: readonly number[];
	readonly perKit: readonly number[];
	readonly perDescale: number;
}

/** Up to so many sums of numbers all of several days are followed together. */
const FEW = 3_200_000;
/** Numbers of loads and kits that a round may come to, about. */
const OF_ROUND = 8;

/**
 * Use followed by how many rounds run and what loads and kits they make, where all kits use
 * the same and these numbers are fewer than the steps of use that would be followed otherwise.
 *
 * @param levels of births, from low to high
 * @param limit use beyond it may be left out
 */
export function usedByNumbers(
	rates: RatesInSteps,
	levels: readonly MeansAtLevel[],
	loads: Loads,
	every: number,
	limit: number,
): Counts | undefined {
	return followed(rates, levels, loads, every, limit, (numbers, steps) => numbers < steps);
}

/** The same where the numbers are few however many steps there are. */
export function usedByFewNumbers(
	rates: RatesInSteps,
	levels: readonly MeansAtLevel[],
	loads: Loads,
	limit: number,
): Counts | undefined {
	return followed(rates, levels, loads, 0, limit, (numbers) => isFew(numbers, levels));
}

/** Whether the numbers of rounds that are added up can be followed in no time. */
export function isFew(numbers: number, levels: readonly MeansAtLevel[]): boolean {
	const { means } = levels[0] as MeansAtLevel;
	const byRoundsAlone = numbers === means.length + 1;
	return numbers * means.length * (byRoundsAlone ? 1 : OF_ROUND) <= FEW;
}

function followed(
	rates: RatesInSteps,
	levels: readonly MeansAtLevel[],
	loads: Loads,
	every: number,
	limit: number,
	isSooner: (numbers: number, steps: number) => boolean,
): Counts | undefined {
	const by = byNumbers(rates, levels, loads, every);
	return by && isSooner(by.numbers, by.steps)
		? roundsLoadsAndKits(levels, by.kitsInLoad, by.most, by.useOf, limit)
		: undefined;
}

/** How use goes by how many rounds run, and what loads and kits they make. */
export interface ByNumbers {
	readonly kitsInLoad: number;
	/** The largest numbers that are followed. */
	readonly most: Numbers;
	/** In steps. */
	readonly useOf: (numbers: Numbers) => number;
	/** How many numbers there are, and steps that would be followed otherwise. */
	readonly numbers: number;
	readonly steps: number;
}

/**
 * @param levels of births, from low to high
 * @returns nothing where kits, or the loads of methods, are not alike
 */
export function byNumbers(
	{ perRound, perLoad, perKit, perDescale }: RatesInSteps,
	levels: readonly MeansAtLevel[],
	loads: Loads,
	every: number,
): ByNumbers | undefined {
	const [eachKit = 0] = perKit;
	const sizes = loads.filter((_, method) => perLoad[method] !== 0).map(({ kits }) => kits);
	const [kitsInLoad = 1] = sizes;
	// Methods whose loads are of one size have as many loads.
	const isOneSize = sizes.every((size) => size === kitsInLoad);
	if (!isOneSize || perKit.some((use) => use !== eachKit)) return undefined;
	const eachLoad = sumOfAll(perLoad);
	// A load of one kit is the kit.
	const [ofLoad, ofKit] = kitsInLoad === 1 ? [0, eachLoad + eachKit] : [eachLoad, eachKit];
	const useOf = ({ rounds, moreLoads, kits }: Numbers) =>
		perRound * rounds +
		ofLoad * (rounds + moreLoads) +
		ofKit * kits +
		(perDescale === 0 ? 0 : perDescale * Math.ceil(rounds / every));
	const { means } = levels.at(-1) as MeansAtLevel;
	const most = mostNumbers(means, kitsInLoad, {
		rounds: perRound > 0 || perDescale > 0,
		loads: ofLoad > 0,
		kits: ofKit > 0,
	});
	const numbers = (most.rounds + 1) * (most.moreLoads + 1) * (most.kits + 1);
	// With descalings each step is followed once for each number of rounds since the last.
	const steps = useOf(most) * (perDescale === 0 ? 1 : Math.min(every, means.length));
	return { kitsInLoad, most, useOf, numbers, steps };
}
