import { calculation } from "../../calculation.ts";
import type { SentAway } from "../../kits/unmetSentAway.ts";
import { flatDay, type HourShares } from "../../rounds/dayClock.ts";
import type { Hands } from "../../rounds/handsOneByOne.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { sources } from "../../sources.ts";
import { MINUTES_PER_HOUR } from "../../values/clock.ts";

interface Inputs {
	readonly starts: readonly number[];
	readonly roundMinutes: number;
	readonly awayHours: number;
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	readonly readyLifeDays: number;
}

const exampleInputs = {
	starts: [420, 1140],
	usesPerDay: [0.6],
	hourShares: flatDay,
	readyLifeDays: 21,
} as const;

const awayInput = { label: say`An autoclaved kit is back after`, unit: "h", min: 0 };

/** Where rounds send kits to an autoclave. */
export const backFromAway = calculation<Inputs, SentAway>({
	key: "back_from_away",
	label: say`When used kits come back`,
	unit: "",
	formula: say`Every round sends all kits that wait away; they are ready so many hours after its start, and not before the round has ended, whatever rounds begin meanwhile. Kits gone out of date are away as long, on average, as often as they go out of date.`,
	source: sources.palm,
	inputs: {
		starts: { label: say`Rounds start at`, unit: say`minutes after midnight` },
		roundMinutes: {
			label: say`Minutes until the kits of a round are ready`,
			unit: "min",
			min: 0,
		},
		awayHours: awayInput,
		usesPerDay: { label: say`Kits used, average`, unit: say`kits/day` },
		hourShares: { label: say`Births through the day`, unit: say`share of each hour` },
		readyLifeDays: { label: say`Days a kit stays ready`, unit: say`days`, min: 0.01 },
	},
	example: {
		inputs: { ...exampleInputs, roundMinutes: 110, awayHours: 24 },
		result: { kind: "sent_away", ...exampleInputs, turnaroundMinutes: 1440 },
		within: 0,
	},
	compute: ({ roundMinutes, awayHours, ...plan }) => ({
		kind: "sent_away",
		...plan,
		turnaroundMinutes: Math.max(roundMinutes, awayHours * MINUTES_PER_HOUR),
	}),
});

/** After each use: the hands, and how long a kit that they send away is gone besides. */
export const handsSendingAway = calculation<{ hands: Hands; awayHours: number }, Hands>({
	key: "hands_sending_away",
	label: say`Work on a kit after each use`,
	unit: "",
	formula: say`The same work; from its beginning to the kit's return pass the hours of the autoclave, where they are more.`,
	source: commonPractice,
	inputs: { hands: { label: say`Work on a kit after each use`, unit: "" }, awayHours: awayInput },
	example: {
		inputs: { hands: { people: 1, workMinutes: 60, aloneMinutes: 20 }, awayHours: 24 },
		result: { people: 1, workMinutes: 60, aloneMinutes: 1380 },
		within: 0,
	},
	compute: ({ hands, awayHours }) => ({
		...hands,
		aloneMinutes: Math.max(hands.aloneMinutes, awayHours * MINUTES_PER_HOUR - hands.workMinutes),
	}),
});
