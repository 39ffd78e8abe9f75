import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { noSteps } from "./handsOneByOne.ts";
import { isDoneFor, type Loads, soaks } from "./loads.ts";
import type { Step } from "./step.ts";

/** What makes a round long: minutes once, for each kit and for each load. */
export interface RoundLength {
	readonly perRound: number;
	/** Already shared among the people in the round. */
	readonly perKit: number;
	/** Of each method: minutes a load, and kits in one. */
	readonly loads: readonly { readonly minutes: number; readonly kits: number }[];
}

/** A list of steps, put together by what they are counted by. */
export function roundLength(steps: readonly Step[], workers: number, loads: Loads): RoundLength {
	const minutesOfAll = (counts: (step: Step) => boolean) =>
		steps.reduce((sum, step) => sum + (counts(step) ? step.minutes : 0), 0);
	return {
		perRound: minutesOfAll(({ basis }) => basis === "round"),
		perKit: minutesOfAll(({ basis }) => basis === "kit") / workers,
		loads: loads.map((load) => ({
			minutes: minutesOfAll(({ basis, method }) => basis === "load" && isDoneFor(load, method)),
			kits: load.kits,
		})),
	};
}

/**
 * Minutes of a round with this many kits; without a kit it does not run.
 *
 * @example minutesOf({ perRound: 30, perKit: 10, loads: [{ minutes: 20, kits: 3 }] }, 4) // 110
 */
export function minutesOf(length: RoundLength, kits: number): number {
	if (kits === 0) return 0;
	const inLoads = length.loads.reduce(
		(sum, load) => sum + load.minutes * Math.ceil(kits / load.kits),
		0,
	);
	return length.perRound + length.perKit * kits + inLoads;
}

/**
 * The most kits, up to `most`, with which a round ends within the minutes it has.
 *
 * One where not even one kit does: the round is then too long, which is said elsewhere,
 * and what comes must still go somewhere.
 */
export function mostKitsWithin(length: RoundLength, minutes: number, most: number): number {
	if (most < 1 || minutesOf(length, most) <= minutes) return most;
	let [kits, tooMany] = [1, most];
	while (tooMany - kits > 1) {
		const middle = (kits + tooMany) >> 1;
		if (minutesOf(length, middle) <= minutes) kits = middle;
		else tooMany = middle;
	}
	return kits;
}

interface Inputs {
	readonly steps: readonly Step[];
	readonly workers: number;
	readonly loads: Loads;
}

/** What makes the rounds of a unit long. */
export const lengthOfRounds = calculation<Inputs, RoundLength>({
	key: "length_of_rounds",
	label: say`What makes a round long`,
	unit: "min",
	formula: say`Minutes once a round; minutes a kit ÷ people; minutes a load of each method.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of a round`, unit: "min" },
		workers: { label: say`People in a round`, unit: say`people`, min: 1 },
		loads: { label: say`Kits in one load of each method`, unit: say`kits` },
	},
	example: {
		inputs: {
			steps: [
				{ step: "mix", basis: "round", minutes: 15, hands_on: "yes" },
				{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes" },
				{ step: "soak", basis: "load", minutes: 20, hands_on: "no" },
			],
			workers: 2,
			loads: soaks(3),
		},
		result: { perRound: 15, perKit: 7.5, loads: [{ minutes: 20, kits: 3 }] },
		within: 0,
	},
	compute: ({ steps, workers, loads }) =>
		steps.length === 0 ? refuse(noSteps()) : roundLength(steps, workers, loads),
});
