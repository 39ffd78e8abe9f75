import type { Calculation } from "../calculation.ts";
import { alike } from "../counts/alike.ts";

/** The same calculation, worked out once for all days on which its inputs are the same. */
export function alikeDays<I extends object, O>(of: Calculation<I, O>): Calculation<I, O> {
	const keys = Object.keys(of.inputs) as (keyof I)[];
	return { ...of, compute: alike(keys, of.compute) };
}
