import { mostKitsWithin } from "../rounds/roundLength.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { shareOf } from "./otherKinds.ts";
import type { Reprocessing } from "./reprocessing.ts";

/** More kits than any round takes. */
const MANY = 1000;

/**
 * The most kits that can be reprocessed in a day: all that end before the next round
 * begins, or all that the people can work on one after the other, day and night (where they
 * have several kinds of kit, as many of this one as its share of them is). Where rounds send kits away there is no limit.
 *
 * @example two people and 110 minutes of work on each kit: 2 × 1440 ÷ 110 = 26.18
 */
export function roomPerDay(reprocessing: Reprocessing): number {
	if (reprocessing.kind === "after_each_use") {
		const { people, workMinutes } = reprocessing.hands;
		return (shareOf(reprocessing) * people * MINUTES_PER_DAY) / workMinutes;
	}
	// Whatever waits is sent away.
	if (reprocessing.kind === "sent_away") return Number.POSITIVE_INFINITY;
	const { starts, length } = reprocessing;
	return starts.reduce((sum, start, i) => {
		const next = starts[i + 1] ?? (starts[0] as number) + MINUTES_PER_DAY;
		return sum + mostKitsWithin(length, next - start, MANY);
	}, 0);
}
