import type { Counts } from "../counts/counts.ts";
import { sumOf } from "../counts/sumOf.ts";
import { descaledTogether } from "./descaledTogether.ts";

/**
 * The uses of rounds or days added up, of many amounts in the terms of the Fourier transform from the first to the
 * last: those that are alike are transformed once, and only their sum is transformed back.
 *
 * @param most use beyond it may be left out
 */
export function addedTogether(used: readonly Counts[], most: number): Counts {
	const idle = used.map(() => 0);
	// Without descalings each round is as good as the first since the last one.
	return descaledTogether(0, 1, used, idle, most) ?? sumOf(used, most);
}
