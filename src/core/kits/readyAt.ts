import { chanceAtLeast, chancesAtMost } from "../counts/poisson.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import type { Reprocessing } from "./unmetPer1000.ts";

/** What can be counted on at one moment. */
export interface ReadyAt {
	/** Mean number of kits ready. */
	readonly ready: number;
	/** Needs at that moment that would find none, of 1,000. */
	readonly nonePer1000: number;
}

/**
 * Kits ready at a moment of the plan.
 *
 * Out of reach are the kits used since the start of the last round whose kits are
 * ready again; after each use, those used within the turnaround. Their number is
 * Poisson; kits gone out of date are not counted as out of reach. The mean of the
 * risk over the day, weighed by the uses, is the unmet share of kit cover.
 *
 * @param minute after the first day's midnight, at which the moment lies
 */
export function readyAt(kits: number, reprocessing: Reprocessing, minute: number): ReadyAt {
	const out = meanOutOfReach(reprocessing, minute);
	const atMost = chancesAtMost(kits, out);
	return {
		ready: atMost.reduce((sum, chance) => sum + chance, 0),
		nonePer1000: 1000 * chanceAtLeast(kits, out),
	};
}

function meanOutOfReach(reprocessing: Reprocessing, minute: number): number {
	if (reprocessing.kind === "after_each_use") {
		const { usesPerDay, turnaround } = reprocessing;
		const day = Math.min(Math.floor(minute / MINUTES_PER_DAY), usesPerDay.length - 1);
		return ((usesPerDay[day] as number) * turnaround) / MINUTES_PER_DAY;
	}
	const { starts, turnaround, uses } = reprocessing;
	const done = starts.filter((start) => start + turnaround <= minute).at(-1);
	return uses.between(done ?? lastBefore(starts, turnaround, minute), minute);
}

/** The rounds of the two days before the plan are like those of its first day. */
function lastBefore(starts: readonly number[], turnaround: number, minute: number): number {
	const firstDay = starts.filter((start) => start < MINUTES_PER_DAY);
	const earlier = [2, 1].flatMap((days) => firstDay.map((start) => start - days * MINUTES_PER_DAY));
	return earlier.filter((start) => start + turnaround <= minute).at(-1) ?? earlier[0] ?? 0;
}
