import type { Counts } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { moved, spread } from "../counts/spread.ts";
import { sumOf } from "../counts/sumOf.ts";
import { memoize } from "../memoize.ts";
import type { Loads } from "../rounds/loads.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { runningRounds } from "../rounds/roundsThatRun.ts";
import type { Steps } from "./commonStep.ts";
import { kitsWithUse } from "./kitsWithUse.ts";
import { mostNumbers, type Numbers, roundsLoadsAndKits } from "./roundsLoadsAndKits.ts";
import type { UseInputs } from "./useInputs.ts";
import { withDescaling } from "./withDescaling.ts";

/** Rates of an item counted in steps. */
interface RatesInSteps {
	readonly perRound: number;
	readonly perLoad: readonly number[];
	readonly perKit: readonly number[];
	readonly perDescale: number;
}

/** How likely each amount of use over the days is, counted in steps. */
export function stepsUsed(
	{ rates, days, loads, descaleEvery }: UseInputs,
	{ of, most }: Steps,
): Counts {
	const steps: RatesInSteps = {
		perRound: of(rates.perRound),
		perLoad: rates.perLoad.map(of),
		perKit: rates.perKit.map(of),
		perDescale: descaleEvery > 0 ? of(rates.perDescale) : 0,
	};
	const oneByOne = days.every((day) => day.kind === "after_each_use");
	const used = oneByOne
		? kitByKit(steps, days, descaleEvery, most)
		: inRounds(steps, days, loads, descaleEvery, most);
	return moved(used, of(rates.perDay * days.length));
}

/** Mean kits of each kind in each round of the days: meansOfRounds[round][kind]. */
function meansOfRounds(days: readonly RoundsOfDay[]): number[][] {
	return days.flatMap((day) =>
		day.kits.map((_, round) => day.byKind.map((of) => of[round] as number)),
	);
}

/** Descalings that use less than this of a step altogether are not followed: the most there can be are counted. */
const HARDLY_A_STEP = 1e-3;

function inRounds(
	rates: RatesInSteps,
	days: readonly RoundsOfDay[],
	loads: Loads,
	every: number,
	most: number,
): Counts {
	const { perRound, perLoad, perKit, perDescale } = rates;
	const means = meansOfRounds(days);
	const descalings = every > 0 ? perDescale * Math.ceil(means.length / every) : 0;
	if (descalings > 0 && descalings < HARDLY_A_STEP)
		return moved(inRounds({ ...rates, perDescale: 0 }, days, loads, every, most), descalings);
	const idle = means.map((kinds) => Math.exp(-kinds.reduce((sum, m) => sum + m, 0)));
	if (perDescale > 0 && perRound === 0 && [...perLoad, ...perKit].every((use) => use === 0)) {
		const rounds = sumOf(days.map((day) => runningRounds(day.kits)));
		return spread(groupsOf(rounds, every), (descalings) => descalings * perDescale, most);
	}
	const followed = byNumbers(rates, means.map(sum), loads, every, most);
	if (followed) return followed;
	const kitsInLoads = loads.map(({ kits }) => kits);
	const used = means.map((kinds) =>
		useOfRound(kinds, perKit, perRound, perLoad, kitsInLoads, most),
	);
	return perDescale === 0 ? sumOf(used, most) : withDescaling(perDescale, every, used, idle, most);
}

/**
 * Use followed by how many rounds run and what loads and kits they make, where all kits use
 * the same and these numbers are fewer than the steps of use that would be followed otherwise.
 */
function byNumbers(
	{ perRound, perLoad, perKit, perDescale }: RatesInSteps,
	means: readonly number[],
	loads: Loads,
	every: number,
	limit: number,
): Counts | undefined {
	const [ofKit = 0] = perKit;
	const ofLoad = sum(perLoad);
	const ofKitsAlone = perRound === 0 && ofLoad === 0 && perDescale === 0;
	if (ofKitsAlone || loads.length > 1 || perKit.some((use) => use !== ofKit)) return undefined;
	const useOf = ({ rounds, moreLoads, kits }: Numbers) =>
		perRound * rounds +
		ofLoad * (rounds + moreLoads) +
		ofKit * kits +
		(perDescale === 0 ? 0 : perDescale * Math.ceil(rounds / every));
	const kitsInLoad = loads[0]?.kits ?? 1;
	const most = mostNumbers(means, kitsInLoad, { loads: ofLoad > 0, kits: ofKit > 0 });
	const numbers = (most.rounds + 1) * (most.moreLoads + 1) * (most.kits + 1);
	// With descalings each step is followed once for each number of rounds since the last.
	const steps = useOf(most) * (perDescale === 0 ? 1 : Math.min(every, means.length));
	return numbers < steps ? roundsLoadsAndKits(means, kitsInLoad, most, useOf, limit) : undefined;
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
	) =>
		kitsWithUse(
			kinds,
			perKit,
			(kits) =>
				kits === 0
					? 0
					: perRound +
						sum(perLoad.map((use, i) => use * Math.ceil(kits / (kitsInLoads[i] as number)))),
			most,
		),
	(kinds, perKit, perRound, perLoad, kitsInLoads, most) => [
		most,
		...kinds,
		...perKit,
		perRound,
		...perLoad,
		...kitsInLoads,
	],
);

/** Each kit a round and a load of its own; a descaling with the first and every so many after. */
function kitByKit(
	{ perRound, perLoad, perKit, perDescale }: RatesInSteps,
	days: readonly RoundsOfDay[],
	every: number,
	most: number,
): Counts {
	const kinds = perKit.map((_, kind) =>
		days.reduce((sum, day) => sum + (day.byKind[kind]?.[0] as number), 0),
	);
	return kitsWithUse(
		kinds,
		perKit,
		(kits) =>
			kits * (perRound + sum(perLoad)) +
			(perDescale === 0 ? 0 : Math.ceil(kits / every) * perDescale),
		most,
	);
}

function sum(amounts: readonly number[]): number {
	return amounts.reduce((all, amount) => all + amount, 0);
}
