import { memoize } from "../memoize.ts";
import { DayClock, type HourShares } from "../rounds/dayClock.ts";
import type { Hands } from "../rounds/handsOneByOne.ts";
import { awayAmongLapsed } from "./awayAmongLapsed.ts";
import { type AwayAt, awayThroughDay } from "./awayThroughDay.ts";

/** So many days are known at once: each takes a few hundred kilobytes. */
const MOST_KNOWN = 32;

/**
 * Kits used that are out of reach through a day with so many uses, like all others.
 *
 * @param lapsed how likely 0, 1, … kits are to go out of date at midnight that those used wait for; undefined where none is
 */
export const awayOnDay = memoize(
	(
		usesPerDay: number,
		hourShares: HourShares,
		hands: Hands,
		lapsed: Float64Array | undefined,
	): readonly AwayAt[] => {
		const uses = new DayClock([usesPerDay], hourShares);
		return lapsed ? awayAmongLapsed(uses, hands, lapsed) : awayThroughDay(uses, hands);
	},
	(usesPerDay, hourShares, { people, workMinutes, aloneMinutes }, lapsed) => [
		usesPerDay,
		hourShares,
		people,
		workMinutes,
		aloneMinutes,
		lapsed,
	],
	MOST_KNOWN,
);
