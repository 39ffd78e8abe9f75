import type { InRounds } from "../../../src/core/kits/roundsGoneThrough.ts";
import type { AfterEachUse } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";

/** Rounds that all last as long, with kits that keep for ever: what has a closed form. */
export function equalRounds(
	usesPerDay: readonly number[],
	starts: readonly number[],
	minutes: number,
	hourShares: HourShares = flatDay,
): InRounds {
	return {
		kind: "in_rounds",
		starts,
		length: { perRound: minutes, perKit: 0, loads: [] },
		plannedMinutes: minutes,
		usesPerDay,
		hourShares,
		life: null,
	};
}

/** Hands without limit, with kits that keep for ever. */
export function oneByOne(
	usesPerDay: readonly number[],
	minutes = 110,
	hourShares: HourShares = flatDay,
): AfterEachUse {
	return {
		kind: "after_each_use",
		usesPerDay,
		hourShares,
		hands: { people: Number.POSITIVE_INFINITY, workMinutes: minutes, aloneMinutes: 0 },
		readyLifeDays: null,
	};
}
