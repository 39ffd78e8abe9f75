import type { Amounts } from "../amounts.ts";
import { chanceAtMost } from "./counts.ts";

/** Rounding error of an amount that is a whole number of steps. */
const ROUNDING_ERROR = 1e-9;
/** An amount less likely than this does not come. */
const NEVER = 1e-12;

/** The chance that an amount is enough for what comes. */
export function chanceEnough({ counts, size }: Amounts, amount: number): number {
	if (size === 0) return 1;
	return Math.min(1, chanceAtMost(counts, Math.floor(amount / size + ROUNDING_ERROR)));
}

/**
 * The next smaller amount that may come; undefined where none is smaller.
 *
 * @example below 60 L in loads of 30 L: 30 L
 */
export function nextSmaller({ counts, size }: Amounts, amount: number): number | undefined {
	if (size === 0) return undefined;
	const { first, chance } = counts;
	const below = Math.ceil(amount / size - ROUNDING_ERROR) - 1;
	for (let count = Math.min(below, first + chance.length - 1); count >= first; count--)
		if ((chance[count - first] as number) > NEVER) return count * size;
	return undefined;
}
