import { calculation } from "../../calculation.ts";
import type { AfterEachUse } from "../../kits/unmetAfterEachUse.ts";
import { sameObject } from "../../memoize.ts";
import { type Refusal, refuse } from "../../refusal.ts";
import { flatDay, type HourShares } from "../../rounds/dayClock.ts";
import type { Hands } from "../../rounds/handsOneByOne.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";

interface EachInputs {
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	readonly hands: Hands;
	readonly readyLifeDays: number;
}

const eachExample: EachInputs = {
	usesPerDay: [0.6],
	hourShares: flatDay,
	hands: { people: 1, workMinutes: 110, aloneMinutes: 0 },
	readyLifeDays: 7,
};

const each = calculation<EachInputs, AfterEachUse>({
	key: "back_after_each_use",
	label: say`When used kits come back`,
	unit: "",
	formula: say`A kit waits until one of the people is free, who then works on it from beginning to end. One person: an M/D/1 queue, several: M/D/c, with the hours of the day.`,
	source: sources.crommelin,
	inputs: {
		usesPerDay: { label: say`Kits used, average`, unit: say`kits/day` },
		hourShares: { label: say`Births through the day`, unit: say`share of each hour` },
		hands: { label: say`Work on a kit after each use`, unit: "" },
		readyLifeDays: { label: say`Days a disinfected kit stays ready`, unit: say`days`, min: 0.01 },
	},
	example: {
		inputs: eachExample,
		result: { kind: "after_each_use", ...eachExample },
		within: 0,
	},
	compute: (inputs) => {
		const { usesPerDay, hands } = inputs;
		const uses = usesPerDay.reduce((sum, each) => sum + each, 0) / usesPerDay.length;
		return canBeDone(hands, uses) ? { kind: "after_each_use", ...inputs } : tooFewHands(hands);
	},
});

/** Whether so few kits are used a day that those that wait do not become more and more. */
export function canBeDone({ people, workMinutes }: Hands, usesPerDay: number): boolean {
	const most = (people * MINUTES_PER_DAY) / workMinutes;
	return usesPerDay < 0.999 * most;
}

export function tooFewHands({ people }: Hands): Refusal {
	return refuse({
		code: "too-few-hands",
		received: say`${people} in a round`,
		allowed: say`fewer uses than people can do`,
		message: say`More kits are used than those who reprocess them can do, even if they did nothing else day and night; the kits that wait become more and more.`,
		place: { file: "unit.csv", line: null, column: "workers_per_round" },
	});
}

/** Where each kit comes back as soon as somebody has reprocessed it. */
export const backAfterEachUse = sameObject(each, (inputs) => [JSON.stringify(inputs)]);
