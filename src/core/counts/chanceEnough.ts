import type { Amounts } from "../amounts.ts";
import { chanceAtMost } from "./counts.ts";

/** Rounding error of an amount that is a whole number of steps; of very many steps, in parts of them. */
const ROUNDING_ERROR = 1e-9;
/** An amount less likely than this does not come. */
const NEVER = 1e-12;

/** The chance that an amount is enough for what comes. */
export function chanceEnough({ counts, size }: Amounts, amount: number): number {
	if (size === 0) return 1;
	const steps = amount / size;
	const most = steps + ROUNDING_ERROR * Math.max(1, steps);
	const { chance, places } = counts;
	if (!places) return Math.min(1, chanceAtMost(counts, Math.floor(most)));
	let sum = 0;
	for (let i = 0; i < places.length; i++)
		if ((places[i] as number) <= most) sum += chance[i] as number;
	return Math.min(1, sum);
}

/**
 * The next smaller amount that may come; undefined where none is smaller.
 *
 * @example below 60 L in loads of 30 L: 30 L
 */
export function nextSmaller({ counts, size }: Amounts, amount: number): number | undefined {
	if (size === 0) return undefined;
	const { first, chance, places } = counts;
	const steps = amount / size;
	const end = steps - ROUNDING_ERROR * Math.max(1, steps);
	if (places) {
		let largest = Number.NEGATIVE_INFINITY;
		for (let i = 0; i < places.length; i++) {
			const place = places[i] as number;
			if (place < end && place > largest && (chance[i] as number) > NEVER) largest = place;
		}
		return Number.isFinite(largest) ? largest * size : undefined;
	}
	const below = Math.ceil(end) - 1;
	for (let count = Math.min(below, first + chance.length - 1); count >= first; count--)
		if ((chance[count - first] as number) > NEVER) return count * size;
	return undefined;
}
