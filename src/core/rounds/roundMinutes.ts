import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { noSteps } from "./handsOneByOne.ts";
import { type Loads, loadsOfStep, soaks } from "./loads.ts";
import type { Step } from "./step.ts";

interface Inputs {
	readonly steps: readonly Step[];
	readonly kits: number;
	readonly workers: number;
	readonly loads: Loads;
}

/** Minutes a step takes in a round with `kits` kits. */
export function stepMinutes(step: Step, { kits, workers, loads }: Omit<Inputs, "steps">): number {
	if (step.basis === "kit") return (step.minutes * kits) / workers;
	if (step.basis === "load") return step.minutes * loadsOfStep(loads, kits, step.method);
	return step.minutes;
}

const wash: Step = { step: say`wash`, basis: "kit", minutes: 15, hands_on: "yes" };
const soak: Step = { step: say`soak`, basis: "load", minutes: 20, hands_on: "no" };
const tidy: Step = { step: say`tidy up`, basis: "round", minutes: 5, hands_on: "yes" };

/** How long a round takes, from its start to its kits being ready. */
export const roundMinutes = calculation<Inputs, number>({
	key: "round_minutes",
	label: say`Minutes of a round`,
	unit: "min",
	formula: say`Minutes once a round, plus minutes a kit × kits ÷ people, plus minutes a load × loads of each method; loads are kits ÷ kits in one, rounded up. One method after the other; where kinds of kit go different ways, every kit counts with each, on the safe side.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of a round`, unit: "min" },
		kits: { label: say`Kits in the round`, unit: say`kits`, min: 0 },
		workers: { label: say`People in a round`, unit: say`people`, min: 1 },
		loads: { label: say`Kits in one load of each method`, unit: say`kits` },
	},
	example: {
		inputs: { steps: [wash, soak, tidy], kits: 4, workers: 2, loads: soaks(3) },
		result: 5 + (15 * 4) / 2 + 20 * 2,
		within: 0,
	},
	compute: ({ steps, ...round }) =>
		steps.length === 0
			? refuse(noSteps())
			: steps.reduce((sum, step) => sum + stepMinutes(step, round), 0),
});
