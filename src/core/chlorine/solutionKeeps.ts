import { MINUTES_PER_HOUR } from "../values/clock.ts";

/**
 * Whether a mixed solution may still be used: at the end of its hours it is poured away.
 *
 * @param minutes since it was mixed
 * @param lifeHours for which the unit uses a mixed solution, by its settings
 * @example solutionKeeps(1440, 24) // false
 */
export function solutionKeeps(minutes: number, lifeHours: number): boolean {
	return minutes < lifeHours * MINUTES_PER_HOUR;
}
