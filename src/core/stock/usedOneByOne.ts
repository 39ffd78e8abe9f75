import type { Amounts } from "../amounts.ts";
import { setAside } from "../counts/counts.ts";
import { spread } from "../counts/spread.ts";
import { kitsOver } from "../rounds/kitsOver.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { exactSteps } from "./commonStep.ts";
import type { UseInputs } from "./useInputs.ts";

/** Use that goes by the number of kits alone. */
export interface UsedOneByOne {
	/** What is enough with the chance given. */
	readonly setAside: (confidence: number) => number;
	/** How likely each amount is. */
	readonly amounts: () => Amounts;
}

/** Of finer amounts each is rounded up to a step: a list of all would be too long. */
const MOST_STEPS = 200_000;

/**
 * Use over days on which every kit is reprocessed by itself, and each takes the same: a kit is a round and
 * a load of its own, and a descaling comes with the first and every so many after. However fine the
 * amounts, there are no more of them than numbers of kits.
 *
 * @returns nothing where rounds gather kits, or kits take different amounts
 */
export function usedOneByOne({ rates, days, descaleEvery }: UseInputs): UsedOneByOne | undefined {
	if (!isOneByOne(days) || !isAlike(rates.perKit)) return undefined;
	const perKit = (rates.perKit[0] ?? 0) + rates.perRound + sumOfAll(rates.perLoad);
	const perDescale = descaleEvery > 0 ? rates.perDescale : 0;
	const exact = exactSteps([rates.perDay, perKit, perDescale]);
	const ofDays = exact.of(rates.perDay * days.length);
	const ofKit = exact.of(perKit);
	const ofDescaling = exact.of(perDescale);
	const exactOf = (kits: number) =>
		ofDays + kits * ofKit + (ofDescaling === 0 ? 0 : Math.ceil(kits / descaleEvery) * ofDescaling);
	const kits = kitsOver(days);
	const last = exactOf(kits.first + kits.chance.length - 1);
	const together = Math.max(1, Math.ceil(last / MOST_STEPS));
	const stepsOf = (number: number) => Math.ceil(exactOf(number) / together);
	const size = exact.size * together;
	return {
		setAside: (confidence) => stepsOf(setAside(kits, confidence)) * size,
		amounts: () => ({ counts: spread(kits, stepsOf), size }),
	};
}

const isOneByOne = (days: readonly RoundsOfDay[]) =>
	days.every(({ kind }) => kind === "after_each_use");
const isAlike = (perKit: readonly number[]) => perKit.every((use) => use === perKit[0]);
