import type { Amounts } from "../amounts.ts";
import { spread } from "../counts/spread.ts";
import type { UseInputs } from "./useInputs.ts";
import { usesByKits } from "./usesByKits.ts";
import { usesByNumbers } from "./usesByNumbers.ts";

/** What is set aside of use that comes to few amounts, however fine they are. */
export interface SetAsideExactly {
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
/** Amounts that are not reached more often than this are not listed: far above what is set aside there may be very many. */
const HARDLY = 1e-9;

/**
 * What to set aside where use goes by the number of kits alone, or by few numbers of rounds that run, loads and
 * kits: one amount for each, none of them rounded.
 *
 * @returns nothing where more has to be told apart
 */
export function setAsideExactly(use: UseInputs, confidence: number): SetAsideExactly | undefined {
	const uses = usesByKits(use) ?? usesByNumbers(use);
	if (!uses) return undefined;
	const { size } = uses;
	const enough = uses.enough(confidence);
	return {
		setAside: enough * size,
		amounts: () => {
			const last = uses.enough(1 - HARDLY);
			const together = stepLength(enough, last);
			const { steps, chance } = uses.ways();
			const rounded = (way: number) => Math.ceil(steps(way) / together - ROUNDING_ERROR);
			const most = Math.ceil(last / together);
			return { counts: spread({ first: 0, chance }, rounded, most), size: size * together };
		},
	};
}

/** How many exact steps are counted as one, so that what is set aside is a whole number of them. */
function stepLength(enough: number, last: number): number {
	const length = Math.max(1, enough / MOST_STEPS, last / MOST_LISTED);
	return enough === 0 ? length : enough / Math.max(1, Math.floor(enough / length));
}
