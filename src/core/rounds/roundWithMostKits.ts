import type { RoundsOfDay } from "./roundsOfDay.ts";

/**
 * Which round of the day, from 0, brings most kits: the largest mean on any day, hours of
 * the day counted. The earliest of several that bring the same; 0 after each use.
 */
export function roundWithMostKits(days: readonly RoundsOfDay[]): number {
	let round = 0;
	let most = 0;
	for (const { kind, kits } of days)
		if (kind === "in_rounds")
			kits.forEach((mean, i) => {
				// What differs by rounding only is alike.
				if (mean > most * (1 + 1e-9) || (i < round && mean >= most * (1 - 1e-9))) {
					most = mean;
					round = i;
				}
			});
	return round;
}
