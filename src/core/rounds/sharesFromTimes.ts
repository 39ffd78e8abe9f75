import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { estimate } from "../source.ts";
import { MINUTES_PER_HOUR } from "../values/clock.ts";
import { flatDay, type HourShares } from "./dayClock.ts";

/** How many births a flat day counts for beside those recorded, so that a few do not make a pattern. */
const FLAT_DAY_BIRTHS = 240;

/** Shares of the hours learned from recorded times (additive smoothing), drawn towards a flat day while they are few. */
export const sharesFromTimes = calculation<{ times: readonly number[] }, HourShares>({
	key: "shares_from_times",
	label: say`Births through the day`,
	unit: say`share of each hour`,
	formula: say`(Births recorded in the hour + ${FLAT_DAY_BIRTHS} ÷ ${flatDay.length}) ÷ (all recorded + ${FLAT_DAY_BIRTHS}).`,
	source: estimate,
	inputs: { times: { label: say`Times of births`, unit: say`h:min` } },
	example: {
		// (120 + 10) ÷ 360 in the first hour, (0 + 10) ÷ 360 in every other.
		inputs: { times: Array.from({ length: 120 }, () => 30) },
		result: flatDay.map((_, hour) => (hour === 0 ? 130 : 10) / 360),
		within: 1e-12,
	},
	compute: ({ times }) =>
		flatDay.map((share, hour) => {
			const inHour = times.filter((time) => Math.floor(time / MINUTES_PER_HOUR) === hour).length;
			return (inHour + FLAT_DAY_BIRTHS * share) / (times.length + FLAT_DAY_BIRTHS);
		}),
});
