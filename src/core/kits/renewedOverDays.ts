import { type RenewalStep, renews } from "./renewalSteps.ts";
import type { Chain } from "./settle.ts";

/**
 * Means over some days: kits renewed a day; and for each step that renews any, how likely
 * each number is, a row for each number of uses (`givenInTable`).
 */
export function renewedOverDays(
	chain: Chain,
	steps: readonly RenewalStep[],
	days: number,
	kits: number,
) {
	const given = steps.filter(renews).map(() => new Float64Array((kits + 1) ** 2));
	const today = new Float64Array((kits + 1) ** 2);
	let perDay = 0;
	for (let day = 0; day < days; day++) {
		let renewing = 0;
		for (const step of steps) {
			const uses = chain.go(step, today);
			if (renews(step))
				perDay += addDay(given[renewing++] as Float64Array, today, uses, days) / days;
		}
	}
	return { given, perDay };
}

/** Adds a day's part to the means; gives back the day's mean, from how likely each number of uses is. */
function addDay(all: Float64Array, today: Float64Array, uses: Float64Array, days: number): number {
	let mean = 0;
	for (let u = 0; u < uses.length; u++) {
		const chance = uses[u] as number;
		const row = u * uses.length;
		// No more are renewed than were not used.
		for (let x = 0; u + x < uses.length; x++) {
			const given = today[row + x] as number;
			all[row + x] = (all[row + x] as number) + given / days;
			mean += chance * x * given;
		}
	}
	return mean;
}
