import { shownPlain } from "./shownNumber.ts";

/** Rounding error of a chance. */
const ROUNDING_ERROR = 1e-9;

/** A chance as a number of 100, down to one decimal: what is kept is never said to be more. @example 0.99719 → "99.7" */
export function shownOf100(chance: number): string {
	return shownPlain(Math.floor(1000 * chance + ROUNDING_ERROR) / 10);
}
