import { LONGEST_SOLUTION_HOURS } from "../../../core/chlorine/longestSolutionHours.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../../../core/values/clock.ts";
import { addDays, type IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";

/** Hours a mixed solution may be used: the unit's own figure, never more than 24. */
export function usableHours(lifeHours: number): number {
	return Math.min(lifeHours, LONGEST_SOLUTION_HOURS);
}

/**
 * When a mixed solution is poured away: made, and the hours it may be used. Down to the minute.
 *
 * @example made 2027-02-28 21:00, 24 h → 2027-03-01 21:00
 */
export function discardAt({ date, minutes }: LocalTime, lifeHours: number): LocalTime {
	const then = Math.floor(minutes + usableHours(lifeHours) * MINUTES_PER_HOUR);
	return {
		date: addDays(date, Math.floor(then / MINUTES_PER_DAY)),
		minutes: then % MINUTES_PER_DAY,
	};
}

/**
 * The last day on which a kit may be used: done, and the days it stays ready. Part days are dropped.
 *
 * @example done 2027-02-26, 7 days → 2027-03-05
 */
export function useBy(done: IsoDate, readyLifeDays: number): IsoDate {
	return addDays(done, Math.floor(readyLifeDays));
}
