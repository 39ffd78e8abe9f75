import { setAside } from "./counts.ts";
import { poisson } from "./poisson.ts";

/** Two whole numbers, the ends included. */
export interface Between {
	readonly low: number;
	readonly high: number;
}

/**
 * Between which numbers a count lies by chance alone when so many are expected (Poisson):
 * below and above, each with no more than half the chance left over.
 *
 * @param expected 0 or more
 * @param sureness 0 to 1: how often the count is to lie between them; it does so at least as often
 * @example betweenByChance(6, 0.95) // from 2 to 11
 */
export function betweenByChance(expected: number, sureness: number): Between {
	const counts = poisson(expected);
	const tail = (1 - sureness) / 2;
	return { low: setAside(counts, tail), high: setAside(counts, 1 - tail) };
}
