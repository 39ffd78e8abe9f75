import { derive, type Figure, gather } from "../../calculation.ts";
import { say } from "../../say.ts";
import { total } from "../../total.ts";
import type { IsoDate } from "../../values/date.ts";

/** What the record says of one measure over some days. */
export interface Recorded {
	/** Undefined where no day is recorded: then nothing is known, and nothing is 0. */
	readonly done: Figure | undefined;
	/** On how many of the days it was recorded, or that it was on none. */
	readonly note: string;
}

/** One figure of a day, with the day it counts for. */
export interface DayPart {
	readonly day: IsoDate;
	/** What names it where someone asks "why?"; no two parts alike. */
	readonly name: string;
	readonly figure: Figure;
}

/**
 * The sum of what was recorded.
 *
 * @param days all days that are looked at
 * @param parts what was written down; those of other days do not count
 * @param recordedOn days on which something was written down of it, where that is more than the days of the parts
 */
export function recorded(
	label: string,
	unit: string,
	days: readonly IsoDate[],
	parts: readonly DayPart[],
	recordedOn: Iterable<IsoDate> = parts.map(({ day }) => day),
): Recorded {
	const all = new Set(days);
	const within = parts.filter(({ day }) => all.has(day));
	const kept = new Set([...recordedOn].filter((day) => all.has(day)));
	if (kept.size === 0) return { done: undefined, note: say`not recorded` };
	const figures = Object.fromEntries(within.map(({ name, figure }) => [name, figure]));
	return {
		done: derive(total("recorded", label, unit), { parts: gather(label, unit, figures) }),
		note:
			kept.size === days.length
				? say`every day recorded`
				: say`${kept.size} of ${days.length} days recorded`,
	};
}
