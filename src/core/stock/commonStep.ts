import type { UseInputs } from "./useInputs.ts";

/** Quantities are typed with at most this fine a fraction. */
const FINEST = 1e-6;
/** More possible amounts than this are not told apart. */
const MOST_AMOUNTS = 50_000;

/**
 * The largest step of which every rate is a multiple, so that use can be counted in whole steps.
 *
 * Where that would make more amounts than can be told apart, a coarser step; the
 * rates are then rounded up to it, to the safe side, by less than 1 in 100 of the use.
 *
 * @example rates of 2 and 3 pieces have the step 1; 0.5 L alone has the step 0.5
 */
export function commonStep({ rates, days }: UseInputs): number {
	const amounts = Object.values(rates).flat();
	return stepOf(amounts, mostUse(amounts, days));
}

/** The step for amounts of which hardly ever more than `most` is used. */
export function stepOf(amounts: readonly number[], most: number): number {
	const used = amounts.filter((amount) => amount > 0);
	if (used.length === 0) return 1;
	const exact =
		used.map((amount) => Math.round(amount / FINEST)).reduce(greatestCommonDivisor) * FINEST;
	return most / exact <= MOST_AMOUNTS ? exact : most / MOST_AMOUNTS;
}

/** An amount that use over the days hardly ever reaches. */
function mostUse(amounts: readonly number[], days: UseInputs["days"]): number {
	const kits = days.reduce((sum, day) => sum + day.kits.reduce((s, m) => s + m, 0), 0);
	const rounds = days.reduce((sum, day) => sum + day.kits.length, 0);
	const each = amounts.reduce((sum, rate) => sum + rate, 0);
	return each * (days.length + rounds + kits + 8 * Math.sqrt(kits) + 8);
}

function greatestCommonDivisor(a: number, b: number): number {
	return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
