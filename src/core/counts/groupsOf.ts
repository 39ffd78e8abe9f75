import { type Counts, mean } from "./counts.ts";
import { poissonTerms } from "./poisson.ts";

/**
 * How many groups of at most `size` a count makes: ceil(count / size).
 *
 * @example 4 kits in a soak that holds 3 make 2 loads
 */
export function groupsOf(counts: Counts, size: number): Counts {
	const first = Math.ceil(counts.first / size);
	const last = Math.ceil((counts.first + counts.chance.length - 1) / size);
	const chance = new Float64Array(last - first + 1);
	for (let i = 0; i < counts.chance.length; i++) {
		const group = Math.ceil((counts.first + i) / size) - first;
		chance[group] = (chance[group] as number) + (counts.chance[i] as number);
	}
	return { first, chance };
}

/** Up to this mean, the chance of none is a number that the others can begin with. */
const MODERATE = 600;

/**
 * The mean of the groups that a Poisson count makes: as the mean of `groupsOf`, without a list.
 *
 * @example meanGroups(Math.LN2, 1) // ln 2
 */
export function meanGroups(meanCount: number, size: number): number {
	if (meanCount > MODERATE) return mean(groupsOf(poissonTerms(meanCount), size));
	let sum = 0;
	for (let count = 1, chance = Math.exp(-meanCount); ; count++) {
		chance *= meanCount / count;
		const part = chance * Math.ceil(count / size);
		sum += part;
		if (count > meanCount && part <= sum * Number.EPSILON) return sum;
	}
}
