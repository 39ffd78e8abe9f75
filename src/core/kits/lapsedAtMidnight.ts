import { memoize } from "../memoize.ts";
import type { Hands } from "../rounds/handsOneByOne.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { cappedUses } from "./cappedUses.ts";
import { renewalsOfDay } from "./renewalsOfDay.ts";
import type { RenewedGiven } from "./renewedGiven.ts";

/**
 * How many kits, of 0, 1, … all, go out of date at a midnight where each kit is reprocessed
 * as it has been used: those whose last day ended, together.
 *
 * A kit used is ready again the same day, one out of date the day after, so that kits that
 * nobody uses end together again and again. As a round at the end of the day, without uses
 * between it and midnight.
 */
export const lapsedAtMidnight = memoize(
	(kits: number, usesPerDay: number, readyLifeDays: number): Float64Array => {
		const day = {
			starts: [MINUTES_PER_DAY - 1],
			uses: [0],
			usesAfterMidnight: usesPerDay,
			plannedMinutes: 0,
		};
		const life = { days: Math.floor(readyLifeDays), renewal: "when_expired" } as const;
		const [atMidnight] = renewalsOfDay(kits, day, life).given;
		return cappedUses(kits, (atMidnight as RenewedGiven)(0));
	},
);

/** How many of the kits that went out of date at midnight are ready again, some minutes later: a person takes one after the other. */
export function doneBy({ people, workMinutes, aloneMinutes }: Hands, minute: number): number {
	const worked = minute - aloneMinutes;
	if (worked < workMinutes) return 0;
	return workMinutes === 0 ? Number.POSITIVE_INFINITY : people * Math.floor(worked / workMinutes);
}

/**
 * How likely each number of kits that went out of date at midnight is to be in work still, once
 * so many are done; of several kinds all are taken in turn, so that each has its part of those.
 *
 * @param ofOthers how likely 0, 1, … kits of other kinds went out of date at the same midnight
 */
export function stillInWork(
	lapsed: Float64Array,
	done: number,
	ofOthers: Float64Array = none,
): Float64Array {
	const away = new Float64Array(lapsed.length);
	for (let kits = 0; kits < lapsed.length; kits++) {
		const chance = lapsed[kits] as number;
		if (done >= kits + ofOthers.length - 1) {
			away[0] = (away[0] as number) + chance;
			continue;
		}
		for (let others = 0; others < ofOthers.length; others++) {
			const both = chance * (ofOthers[others] as number);
			const part = others === 0 ? 1 : kits / (kits + others);
			const left = Math.max(0, kits - part * done);
			const whole = Math.floor(left);
			away[whole] = (away[whole] as number) + both * (1 - (left - whole));
			if (left > whole) away[whole + 1] = (away[whole + 1] as number) + both * (left - whole);
		}
	}
	return away;
}

const none: Float64Array = Float64Array.of(1);

/** Kits away for one reason or the other, apart from each other. */
export function bothAway(one: Float64Array, other: Float64Array): Float64Array {
	const both = new Float64Array(one.length + other.length - 1);
	for (let n = 0; n < one.length; n++) {
		const p = one[n] as number;
		for (let m = 0; m < other.length; m++)
			both[n + m] = (both[n + m] as number) + p * (other[m] as number);
	}
	return both;
}
