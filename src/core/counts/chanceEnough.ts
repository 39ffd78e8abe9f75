import type { Amounts } from "../amounts.ts";
import { chanceAtMost } from "./counts.ts";

/** Rounding error of an amount that is a whole number of steps; of very many steps, in parts of them. */
const ROUNDING_ERROR = 1e-9;
/** An amount less likely than this does not come. */
const NEVER = 1e-12;

/** The chance that an amount is enough for what comes. */
export function chanceEnough({ counts, size }: Amounts, amount: number): number {
	if (size === 0) return 1;
	const { first, chance, places, beyond } = counts;
	const most = amount / size + roundingError(amount / size);
	let sum = 0;
	for (let i = 0; i < chance.length; i++)
		if ((places ? (places[i] as number) : first + i) <= most) sum += chance[i] as number;
	if (beyond && most >= first + chance.length) sum += chanceAtMost(beyond(), Math.floor(most));
	return Math.min(1, sum);
}

/**
 * The next smaller amount that may come; undefined where none is smaller.
 *
 * @example below 60 L in loads of 30 L: 30 L
 */
export function nextSmaller({ counts, size }: Amounts, amount: number): number | undefined {
	if (size === 0) return undefined;
	const { first, chance, places, beyond } = counts;
	const end = amount / size - roundingError(amount / size);
	if (beyond && end > first + chance.length) {
		const further = nextSmaller({ counts: beyond(), size }, amount);
		if (further !== undefined) return further;
	}
	let largest = Number.NEGATIVE_INFINITY;
	for (let i = 0; i < chance.length; i++) {
		const place = places ? (places[i] as number) : first + i;
		if (place < end && place > largest && (chance[i] as number) > NEVER) largest = place;
	}
	return Number.isFinite(largest) ? largest * size : undefined;
}

const roundingError = (steps: number) => ROUNDING_ERROR * Math.max(1, steps);
