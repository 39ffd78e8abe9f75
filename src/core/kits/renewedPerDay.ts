import { calculation } from "../calculation.ts";
import { flatDay } from "../rounds/dayClock.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { renewalsOfPlan } from "./kitsThatCame.ts";
import type { InRounds } from "./roundsGoneThrough.ts";
import { RoundsGoneThrough } from "./roundsGoneThrough.ts";

interface Inputs {
	readonly kitsInService: number;
	readonly reprocessing: InRounds;
}

/**
 * Kits that go through a round although nobody used them, per day.
 *
 * The oldest ready kit is used first. Within 5 % of a simulation of just these rules.
 */
export const renewedPerDay = calculation<Inputs, number>({
	key: "kits_renewed_expected",
	label: say`Kits gone out of date or renewed in time, average`,
	unit: say`kits/day`,
	formula: say`The rounds of a day like the plan's days on average are gone through again and again until it settles. When expired: a kit joins the first round after its last day. In time: a kit joins when its last day ends before the next round's kits are ready; if the two oldest that remain end on the same day, less than two days after that, one of them joins too. With few kits the last day of every kit is followed; with many, that of the oldest, and how many of the others end on each later day is taken from the days' own numbers, each day by itself.`,
	source: sources.perishable,
	inputs: {
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		reprocessing: { label: say`When used kits come back`, unit: "" },
	},
	example: {
		// Three kits that nobody uses, each renewed in its turn at the end of the eighth day it may be used.
		inputs: {
			kitsInService: 3,
			reprocessing: {
				kind: "in_rounds",
				starts: [420, 1140],
				length: { perRound: 110, perKit: 0, loads: [] },
				plannedMinutes: 110,
				usesPerDay: [0],
				hourShares: flatDay,
				life: { days: 7, renewal: "in_time" },
			},
		},
		result: 3 / 7,
		within: 1e-3,
	},
	compute: ({ kitsInService, reprocessing }) =>
		kitsInService === 0
			? 0
			: (renewalsOfPlan(kitsInService, new RoundsGoneThrough(reprocessing))?.perDay ?? 0),
});
