import type { Counts } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import type { LevelNode } from "../counts/laguerreNodes.ts";
import { mixedOver, NEVER } from "../counts/mixedOver.ts";
import { moved, spread } from "../counts/spread.ts";
import { sumOf } from "../counts/sumOf.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import { atLevel } from "../rounds/atLevel.ts";
import type { Loads } from "../rounds/loads.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { runningRounds } from "../rounds/roundsThatRun.ts";
import { addedTogether } from "./addedTogether.ts";
import type { Steps } from "./commonStep.ts";
import type { MeansAtLevel } from "./followRounds.ts";
import { kitsWithUse } from "./kitsWithUse.ts";
import { type RatesInSteps, usedByFewNumbers, usedByNumbers } from "./usedByNumbers.ts";
import type { UseInputs } from "./useInputs.ts";
import { useOfKinds } from "./useOfKinds.ts";
import { withDescaling } from "./withDescaling.ts";

/**
 * How likely each amount of use over the days is, counted in steps.
 *
 * @param nodes of the level of births that the days share; where left out, births are as planned
 */
export function stepsUsed(
	use: UseInputs,
	steps: Steps,
	nodes: readonly LevelNode[] = AS_PLANNED,
): Counts {
	const { rates, days, loads, descaleEvery } = use;
	const inSteps = ratesInSteps(use, steps);
	const used = inRounds(inSteps, days, nodes, loads, descaleEvery, steps.most);
	return moved(used, steps.of(rates.perDay * days.length));
}

/** The same without descalings, where the days are sooner gone through together than one by one. */
export function usedTogether(
	use: UseInputs,
	steps: Steps,
	nodes: readonly LevelNode[],
): Counts | undefined {
	const { rates, days, loads } = use;
	const inSteps = { ...ratesInSteps(use, steps), perDescale: 0 };
	const used = usedByFewNumbers(inSteps, meansAtLevels(days, nodes), loads, steps.most);
	return used && moved(used, steps.of(rates.perDay * days.length));
}

/** What an item uses, in steps. */
export function ratesInSteps(
	{ rates, descaleEvery }: UseInputs,
	{ of }: Pick<Steps, "of">,
): RatesInSteps {
	return {
		perRound: of(rates.perRound),
		perLoad: rates.perLoad.map(of),
		perKit: rates.perKit.map(of),
		perDescale: descaleEvery > 0 ? of(rates.perDescale) : 0,
	};
}

const AS_PLANNED: readonly LevelNode[] = [{ factor: 1, weight: 1 }];

function atLevels(days: readonly RoundsOfDay[], factor: number): RoundsOfDay[] {
	return days.map((day) => atLevel(day, factor));
}

/** Mean kits of each kind in each round of the days: meansOfRounds[round][kind]. */
function meansOfRounds(days: readonly RoundsOfDay[]): number[][] {
	return days.flatMap((day) =>
		day.kits.map((_, round) => day.byKind.map((of) => of[round] as number)),
	);
}

/** The same objects for all items that are asked for over the same days. */
export const meansAtLevels = memoizeByObject(
	(days: readonly RoundsOfDay[], nodes: readonly LevelNode[]): MeansAtLevel[] =>
		nodes
			.filter(({ weight }) => weight > NEVER)
			.map(({ factor, weight }) => ({
				means: atLevels(days, factor).flatMap(({ kits }) => kits),
				weight,
			})),
);

/** Descalings that use less than this of a step altogether are not followed: the most there can be are counted. */
const HARDLY_A_STEP = 1e-3;

function inRounds(
	rates: RatesInSteps,
	days: readonly RoundsOfDay[],
	nodes: readonly LevelNode[],
	loads: Loads,
	every: number,
	most: number,
): Counts {
	const { perRound, perLoad, perKit, perDescale } = rates;
	const rounds = days.reduce((all, { kits }) => all + kits.length, 0);
	const descalings = every > 0 ? perDescale * Math.ceil(rounds / every) : 0;
	if (descalings > 0 && descalings < HARDLY_A_STEP)
		return moved(
			inRounds({ ...rates, perDescale: 0 }, days, nodes, loads, every, most),
			descalings,
		);
	if (perDescale > 0 && perRound === 0 && [...perLoad, ...perKit].every((use) => use === 0))
		return mixedOver(nodes, (factor) => {
			const run = sumOf(atLevels(days, factor).map(({ kits }) => runningRounds(kits)));
			return spread(groupsOf(run, every), (descalings) => descalings * perDescale, most);
		});
	return (
		usedByNumbers(rates, meansAtLevels(days, nodes), loads, every, most) ??
		mixedOver(nodes, (factor) => addedUp(rates, atLevels(days, factor), loads, every, most))
	);
}

/** The use of each round added up. */
function addedUp(
	{ perRound, perLoad, perKit, perDescale }: RatesInSteps,
	days: readonly RoundsOfDay[],
	loads: Loads,
	every: number,
	most: number,
): Counts {
	const means = meansOfRounds(days);
	const idle = means.map((kinds) => Math.exp(-kinds.reduce((sum, m) => sum + m, 0)));
	const kitsInLoads = loads.map(({ kits }) => kits);
	const used = means.map((kinds) =>
		useOfRound(kinds, perKit, perRound, perLoad, kitsInLoads, most),
	);
	return perDescale === 0
		? addedTogether(used, most)
		: withDescaling(perDescale, every, used, idle, most);
}

/**
 * Use of one round: nothing where it does not run. Where kinds of kit go different ways,
 * every kit counts with each load, on the safe side.
 */
const useOfRound = memoize(
	(
		kinds: readonly number[],
		perKit: readonly number[],
		perRound: number,
		perLoad: readonly number[],
		kitsInLoads: readonly number[],
		most: number,
	) => {
		if (perLoad.every((use) => use === 0)) {
			const kits = { shape: Number.POSITIVE_INFINITY, byLevel: kinds.map(() => 0), sure: kinds };
			return useOfKinds(kits, { perKit, once: perRound, perGroup: 0, groupOf: 1 }, most);
		}
		const ofLoads = (kits: number) =>
			sum(perLoad.map((use, i) => use * Math.ceil(kits / (kitsInLoads[i] as number))));
		return kitsWithUse(kinds, perKit, (kits) => (kits === 0 ? 0 : perRound + ofLoads(kits)), most);
	},
	// Where kinds end, or two methods of one kind could be taken for one method of two kinds.
	(...inputs) => [inputs[0].length, ...inputs.flat()],
);

function sum(amounts: readonly number[]): number {
	return amounts.reduce((all, amount) => all + amount, 0);
}
