import type { IsoDate } from "../values/date.ts";
import { inOrder } from "../values/inOrder.ts";

/** A round that was done, as far as descaling goes. */
export interface DescalingRound {
	readonly date: IsoDate;
	/** Minutes after its day's midnight. */
	readonly start: number;
	readonly descaled: "yes" | "no";
}

/** How long ago the last descaling was. */
export interface SinceDescaling {
	/** Rounds that were done since; descaling goes on counting over all weeks. */
	readonly rounds: number;
	/** Its day; undefined where nothing says that there was one. */
	readonly lastOn: IsoDate | undefined;
}

/**
 * Rounds done since the last descaling, before a day.
 *
 * The last one is the latest round in which the record says so, or the day of the settings
 * where that is later. Without either every round of the record counts.
 *
 * @param rounds in any order
 * @param lastDescaledOn of the settings
 * @param before rounds of this day and later do not count
 * @example descaled on Monday, rounds on Tuesday and Thursday → 2
 */
export function sinceDescaling(
	rounds: readonly DescalingRound[],
	lastDescaledOn: IsoDate | undefined,
	before: IsoDate,
): SinceDescaling {
	const done = rounds
		.filter(({ date }) => date < before)
		.sort((a, b) => inOrder(a.date, b.date) || a.start - b.start);
	const last = done.findLastIndex(({ descaled }) => descaled === "yes");
	const byRecord = done[last]?.date;
	if (lastDescaledOn !== undefined && lastDescaledOn > (byRecord ?? ""))
		return {
			rounds: done.filter(({ date }) => date > lastDescaledOn).length,
			lastOn: lastDescaledOn,
		};
	return { rounds: done.length - last - 1, lastOn: byRecord };
}
