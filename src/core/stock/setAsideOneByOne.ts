import type { Amounts } from "../amounts.ts";
import { type Counts, setAside } from "../counts/counts.ts";
import { spread } from "../counts/spread.ts";
import { kitsOver } from "../rounds/kitsOver.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { exactSteps } from "./commonStep.ts";
import type { UseInputs } from "./useInputs.ts";

/** What is set aside of use that goes by the number of kits alone. */
export interface SetAsideOneByOne {
	readonly setAside: number;
	/** How likely each amount is that may come. */
	readonly amounts: () => Amounts;
}

/** Where amounts are finer, all but what is set aside are rounded up to one of so many steps of it. */
const MOST_STEPS = 20_000;
/** Up to the most that may come there are no more steps than so many either. */
const MOST_LISTED = 200_000;
/** Rounding error of an amount that is a whole number of steps. */
const ROUNDING_ERROR = 1e-9;
/** Numbers of kits that are not reached more often than this are not listed: far above what is set aside there may be very many. */
const HARDLY = 1e-9;

/**
 * What to set aside for days on which every kit is reprocessed by itself, and each takes the same: a kit is a
 * round and a load of its own, and a descaling comes with the first and every so many after. However fine
 * the amounts, there are no more of them than numbers of kits.
 *
 * @returns nothing where rounds gather kits, or kits take different amounts
 */
export function setAsideOneByOne(
	{ rates, days, descaleEvery }: UseInputs,
	confidence: number,
): SetAsideOneByOne | undefined {
	if (!isOneByOne(days) || !isAlike(rates.perKit)) return undefined;
	const perKit = (rates.perKit[0] ?? 0) + rates.perRound + sumOfAll(rates.perLoad);
	const perDescale = descaleEvery > 0 ? rates.perDescale : 0;
	const exact = exactSteps([rates.perDay, perKit, perDescale]);
	const ofDays = exact.of(rates.perDay * days.length);
	const ofKit = exact.of(perKit);
	const ofDescaling = exact.of(perDescale);
	const exactOf = (number: number) =>
		ofDays +
		number * ofKit +
		(ofDescaling === 0 ? 0 : Math.ceil(number / descaleEvery) * ofDescaling);
	const kits = kitsOver(days);
	const enough = setAside(kits, confidence);
	return {
		setAside: exactOf(enough) * exact.size,
		amounts: () => {
			const known = reached(kits);
			const last = exactOf(known.first + known.chance.length - 1);
			const together = stepLength(exactOf(enough), last);
			const stepsOf = (number: number) => Math.ceil(exactOf(number) / together - ROUNDING_ERROR);
			return { counts: spread(known, stepsOf), size: exact.size * together };
		},
	};
}

/** How many exact steps are counted as one, so that what is set aside is a whole number of them. */
function stepLength(enough: number, last: number): number {
	const length = Math.max(1, enough / MOST_STEPS, last / MOST_LISTED);
	return enough === 0 ? length : enough / Math.max(1, Math.floor(enough / length));
}

function reached({ first, chance }: Counts): Counts {
	let end = chance.length;
	for (let beyond = 0; end > 1; end--) {
		beyond += chance[end - 1] as number;
		if (beyond > HARDLY) break;
	}
	return { first, chance: chance.subarray(0, end) };
}

const isOneByOne = (days: readonly RoundsOfDay[]) =>
	days.every(({ kind }) => kind === "after_each_use");
const isAlike = (perKit: readonly number[]) => perKit.every((use) => use === perKit[0]);
