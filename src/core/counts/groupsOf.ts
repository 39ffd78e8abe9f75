import type { Counts } from "./counts.ts";

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
