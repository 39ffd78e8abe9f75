import { calculation, refuse } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../sources.ts";
import { noSteps } from "./handsOneByOne.ts";
import type { Step } from "./step.ts";

/** What makes a round long: minutes once, for each kit and for each load. */
export interface RoundLength {
	readonly perRound: number;
	/** Already shared among the people in the round. */
	readonly perKit: number;
	readonly perLoad: number;
	readonly kitsInLoad: number;
}

/** A list of steps, put together by what they are counted by. */
export function roundLength(
	steps: readonly Step[],
	workers: number,
	kitsInLoad: number,
): RoundLength {
	const minutesBy = (basis: Step["basis"]) =>
		steps.reduce((sum, step) => sum + (step.basis === basis ? step.minutes : 0), 0);
	return {
		perRound: minutesBy("round"),
		perKit: minutesBy("kit") / workers,
		perLoad: minutesBy("load"),
		kitsInLoad,
	};
}

/**
 * Minutes of a round with this many kits; without a kit it does not run.
 *
 * @example minutesOf({ perRound: 30, perKit: 10, perLoad: 20, kitsInLoad: 3 }, 4) // 110
 */
export function minutesOf(length: RoundLength, kits: number): number {
	if (kits === 0) return 0;
	const loads = Math.ceil(kits / length.kitsInLoad);
	return length.perRound + length.perKit * kits + length.perLoad * loads;
}

/**
 * The most kits, up to `most`, with which a round ends within the minutes it has.
 *
 * One where not even one kit does: the round is then too long, which is said elsewhere,
 * and what comes must still go somewhere.
 */
export function mostKitsWithin(length: RoundLength, minutes: number, most: number): number {
	let kits = most;
	while (kits > 1 && minutesOf(length, kits) > minutes) kits--;
	return kits;
}

interface Inputs {
	readonly steps: readonly Step[];
	readonly workers: number;
	readonly kitsInLoad: number;
}

/** What makes the rounds of a unit long. */
export const lengthOfRounds = calculation<Inputs, RoundLength>({
	key: "length_of_rounds",
	label: say`What makes a round long`,
	unit: "min",
	formula: say`Minutes once a round; minutes a kit ÷ people; minutes a load.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of a round`, unit: "min" },
		workers: { label: say`People in a round`, unit: say`people`, min: 1 },
		kitsInLoad: { label: say`Kits in one soak`, unit: say`kits`, min: 1 },
	},
	example: {
		inputs: {
			steps: [
				{ step: "mix", basis: "round", minutes: 15, hands_on: "yes" },
				{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes" },
				{ step: "soak", basis: "load", minutes: 20, hands_on: "no" },
			],
			workers: 2,
			kitsInLoad: 3,
		},
		result: { perRound: 15, perKit: 7.5, perLoad: 20, kitsInLoad: 3 },
		within: 0,
	},
	compute: ({ steps, workers, kitsInLoad }) =>
		steps.length === 0 ? refuse(noSteps()) : roundLength(steps, workers, kitsInLoad),
});
