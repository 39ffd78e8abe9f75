import { decimalSign } from "./language.ts";

/**
 * A number with at most so many decimals for reading, rounded to the nearest, none that says
 * nothing, with the decimal sign of the language. @example 2.50 with 3 → "2.5"
 */
export function atMost(value: number, decimals: number): string {
	return String(Number(value.toFixed(decimals))).replace(".", decimalSign);
}
