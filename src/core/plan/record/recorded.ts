import { derive, type Figure, gather } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { total } from "../../total.ts";
import type { IsoDate } from "../../values/date.ts";

/** What the record says of one measure over some days. */
export interface Recorded {
	/** Undefined where no day is recorded: then nothing is known, and nothing is 0. */
	readonly done: Figure | undefined;
	/** On how many of the days it was recorded, or that it was on none. */
	readonly note: string;
	/** What was done on each of the days that are recorded; 0 where it is recorded that there was none. */
	readonly byDay: ReadonlyMap<IsoDate, number>;
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
	recordedOn: Iterable<IsoDate> = [],
): Recorded {
	const all = new Set(days);
	const within = parts.filter(({ day }) => all.has(day));
	const byDay = new Map<IsoDate, number>();
	for (const day of recordedOn) if (all.has(day)) byDay.set(day, 0);
	for (const { day, figure } of within)
		byDay.set(day, (byDay.get(day) ?? 0) + (valueIn(figure) ?? 0));
	if (byDay.size === 0) return { done: undefined, note: say`not recorded`, byDay };
	const figures = Object.fromEntries(within.map(({ name, figure }) => [name, figure]));
	return {
		done: derive(total("recorded", label, unit), { parts: gather(label, unit, figures) }),
		note: say`${byDay.size} of ${days.length} days recorded`,
		byDay,
	};
}
