import { setAside } from "../counts/counts.ts";
import { kitsOver } from "../rounds/kitsOver.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { unroundedSteps } from "./commonStep.ts";
import type { PossibleUses } from "./possibleUses.ts";
import type { UseInputs } from "./useInputs.ts";

/** Numbers of kits that are not reached more often than this are not listed: far above what is set aside there may be very many. */
const HARDLY = 1e-9;

/**
 * Use that goes by the number of kits alone, each of which takes the same. Of kits that are reprocessed one by
 * one each is a round and a load of its own, and a descaling comes with the first and every so many after; those
 * of rounds take something for themselves only.
 *
 * @returns nothing where use goes by what rounds gather, or kits take different amounts
 */
export function usesByKits(use: UseInputs): PossibleUses | undefined {
	const { rates, days, loads, descaleEvery } = use;
	const oneByOne = days.every(({ kind }) => kind === "after_each_use");
	// A load of one kit is the kit.
	const isKit = (method: number) => oneByOne || loads[method]?.kits === 1;
	const isGathered =
		!oneByOne &&
		(rates.perRound > 0 || rates.perLoad.some((load, method) => load > 0 && !isKit(method)));
	const perDescale = descaleEvery > 0 ? rates.perDescale : 0;
	const [kit = 0] = rates.perKit;
	if (rates.perKit.some((each) => each !== kit)) return undefined;
	if (isGathered || (!oneByOne && perDescale > 0)) return undefined;
	// Of all loads that take anything each is then a kit.
	const eachKit = kit + sumOfAll(rates.perLoad) + (oneByOne ? rates.perRound : 0);
	const { of, size } = unroundedSteps([rates.perDay, eachKit, perDescale]);
	const ofDays = of(rates.perDay * days.length);
	const ofKit = of(eachKit);
	const ofDescaling = of(perDescale);
	const stepsOf = (kits: number) =>
		ofDays + kits * ofKit + (ofDescaling === 0 ? 0 : Math.ceil(kits / descaleEvery) * ofDescaling);
	const kits = kitsOver(days);
	return {
		size,
		enough: (confidence) => stepsOf(setAside(kits, confidence)),
		ways: () => {
			const last = setAside(kits, 1 - HARDLY);
			const chance = kits.chance.subarray(0, last - kits.first + 1);
			const places = new Float64Array(chance.length);
			for (let i = 0; i < chance.length; i++) places[i] = stepsOf(kits.first + i);
			return { chance, places };
		},
	};
}
