import type { Counts } from "../counts/counts.ts";
import { moved, spread } from "../counts/spread.ts";
import { kitsOver } from "../rounds/kitsOver.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { Steps } from "./commonStep.ts";
import type { UseInputs } from "./useInputs.ts";

/**
 * Where every kit is reprocessed by itself, and each takes the same: all that goes with one as the use
 * of a kit. It is then counted in steps that are as few as the kits; else what was given.
 */
export function eachKitAlone(use: UseInputs): UseInputs {
	const { rates, days } = use;
	if (!isOneByOne(days) || !isAlike(rates.perKit)) return use;
	const more = rates.perRound + sumOfAll(rates.perLoad);
	const perKit = rates.perKit.map((ofKit) => ofKit + more);
	return { ...use, rates: { ...rates, perRound: 0, perLoad: rates.perLoad.map(() => 0), perKit } };
}

/**
 * How likely each amount of use over the days is, counted in steps, where each kit is a round and a load
 * of its own and takes the same: it goes by the number of kits alone, which is Poisson, and negative
 * binomial where births are forecast. A descaling comes with the first and every so many after.
 *
 * @returns nothing where rounds gather kits, or kits take different amounts
 */
export function usedOneByOne(use: UseInputs, { of, most }: Steps): Counts | undefined {
	const { days, descaleEvery } = use;
	const { perKit, perRound, perLoad, perDay, perDescale } = use.rates;
	if (!isOneByOne(days) || !isAlike(perKit)) return undefined;
	const ofKit = of(perKit[0] ?? 0) + of(perRound) + sumOfAll(perLoad.map(of));
	const ofDescaling = descaleEvery > 0 ? of(perDescale) : 0;
	const descalings = (kits: number) => (ofDescaling === 0 ? 0 : Math.ceil(kits / descaleEvery));
	const { first, chance } = kitsOver(days);
	// Beyond it, what so many kits take alone is more than is asked for.
	const enough = ofKit > 0 ? Math.floor(most / ofKit) : most;
	const used = spread(
		{ first, chance: chance.subarray(0, Math.max(1, enough + 1 - first)) },
		(kits) => kits * ofKit + descalings(kits) * ofDescaling,
		most,
	);
	return moved(used, of(perDay * days.length));
}

const isOneByOne = (days: readonly RoundsOfDay[]) =>
	days.every(({ kind }) => kind === "after_each_use");
const isAlike = (perKit: readonly number[]) => perKit.every((use) => use === perKit[0]);
