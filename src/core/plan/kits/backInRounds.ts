import { calculation } from "../../calculation.ts";
import type { ReadyLife } from "../../kits/renewalSteps.ts";
import type { InRounds } from "../../kits/roundsGoneThrough.ts";
import { sameObject } from "../../memoize.ts";
import { flatDay, type HourShares } from "../../rounds/dayClock.ts";
import type { RoundLength } from "../../rounds/roundLength.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";

interface RoundsInputs {
	readonly starts: readonly number[];
	readonly length: RoundLength;
	readonly plannedMinutes: number;
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	readonly life: ReadyLife;
	readonly waterMinutes: number;
}

const inRoundsExample = {
	starts: [420, 1140],
	length: { perRound: 110, perKit: 0, loads: [] },
	plannedMinutes: 110,
	usesPerDay: [0.6],
	hourShares: flatDay,
	life: { days: 7, renewal: "in_time" },
	waterMinutes: 0,
} as const;

const each = calculation<RoundsInputs, InRounds>({
	key: "back_in_rounds",
	label: say`When used kits come back`,
	unit: "",
	formula: say`The plan's rounds are gone through one by one, each with its own minutes: it takes the kits that wait, at most what ends before the next round, and gives all of them back at its end. Kits that go out of date are missing until a later round has ended. Where water is boiled once a kit waits, a kit used later than its water takes before a round waits for the next one.`,
	source: sources.palm,
	inputs: {
		starts: { label: say`Rounds start at`, unit: say`minutes after midnight` },
		length: { label: say`What makes a round long`, unit: "min" },
		plannedMinutes: {
			label: say`Minutes until the kits of a round are ready`,
			unit: "min",
			min: 0,
		},
		usesPerDay: { label: say`Kits used, average`, unit: say`kits/day` },
		hourShares: { label: say`Births through the day`, unit: say`share of each hour` },
		life: { label: say`How long a ready kit may be used`, unit: "" },
		waterMinutes: {
			label: say`A used kit waits for its water`,
			unit: "min",
			min: 0,
		},
	},
	example: {
		inputs: inRoundsExample,
		result: { kind: "in_rounds", ...inRoundsExample },
		within: 0,
	},
	compute: (inputs) => ({ kind: "in_rounds", ...inputs }),
});

/** Where kits come back at the end of rounds. */
export const backInRounds = sameObject(each, (inputs) => [JSON.stringify(inputs)]);
