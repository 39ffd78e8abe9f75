import { decimalSign } from "./language.ts";

/** A number with so many decimals for reading, rounded to the nearest, with the decimal sign of the language. @example 2.46 with 1 → "2.5" */
export function fixed(value: number, decimals: number): string {
	return value.toFixed(decimals).replace(".", decimalSign);
}
