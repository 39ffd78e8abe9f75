import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { DayClock, flatDay, type HourShares } from "./dayClock.ts";
import { goneOutOfDate, kitsInRounds, type RoundsOfDay, startsAndHours } from "./roundsOfDay.ts";

interface Inputs {
	readonly starts: readonly number[];
	readonly hourShares: HourShares;
	/** Of some days before and of the day itself, earliest first. */
	readonly uses: readonly number[];
	readonly expiriesYesterday: number;
	readonly expiriesToday: number;
	readonly waterMinutes: number;
}

/**
 * Mean number of kits in each round of a day where water is boiled once a kit waits: those
 * used in time for their water to be cool when the round begins.
 *
 * Kits renewed because nobody used them are known beforehand, and so is their water.
 */
export const kitsWithWater = calculation<Inputs, RoundsOfDay>({
	key: "kits_with_water",
	label: say`Kits in each round, average`,
	unit: say`kits`,
	formula: say`Kits used between the last moment for the round before and the last moment for this one, by the share of births in those hours; the last moment is the start of the round less heating, hold and cooling of its water. Kits gone out of date, spread evenly over the day, join the next round.`,
	source: sources.thinning,
	inputs: {
		...startsAndHours,
		uses: { label: say`Kits used, average, day by day`, unit: say`kits/day` },
		...goneOutOfDate,
		waterMinutes: {
			label: say`From lighting the fire to cool water`,
			unit: "min",
			min: 0,
		},
	},
	example: {
		// One use an hour today and none yesterday; water takes 6 hours: of the 7:00 round's only the use before 1:00 counts.
		inputs: {
			starts: [7 * 60, 14 * 60, 21 * 60],
			hourShares: flatDay,
			uses: [0, 24],
			expiriesYesterday: 0,
			expiriesToday: 0,
			waterMinutes: 6 * 60,
		},
		result: {
			kind: "in_rounds",
			starts: [7 * 60, 14 * 60, 21 * 60],
			kits: [1, 7, 7],
			byKind: [[1, 7, 7]],
		},
		within: 1e-9,
	},
	compute: ({ starts, hourShares, uses, waterMinutes, ...expiries }) => {
		const clock = new DayClock(uses, hourShares);
		const midnight = (uses.length - 1) * MINUTES_PER_DAY;
		const lastYesterday = (starts.at(-1) as number) - MINUTES_PER_DAY;
		const unused = kitsInRounds.compute({
			starts,
			hourShares,
			usesYesterday: 0,
			usesToday: 0,
			...expiries,
		}) as RoundsOfDay;
		const kits = starts.map((start, i) => {
			const from = midnight + (starts[i - 1] ?? lastYesterday) - waterMinutes;
			const to = midnight + start - waterMinutes;
			return clock.between(from, to) + (unused.kits[i] as number);
		});
		return { kind: "in_rounds", starts, kits, byKind: [kits] };
	},
});
