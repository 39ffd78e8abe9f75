import { calculation } from "../calculation.ts";
import type { Step } from "../rounds/step.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import type { MethodsOfKits } from "./methodsOfKits.ts";

interface Inputs {
	readonly steps: readonly Step[];
	/** Of each kind planned for. */
	readonly kinds: readonly MethodsOfKits[];
}

/** The steps that a round of the unit's kits has: a step of a method by which no kit goes is left out. */
export const stepsDone = calculation<Inputs, readonly Step[]>({
	key: "steps_done",
	label: say`Steps of a round`,
	unit: "min",
	formula: say`The steps listed, without those of a method that no piece goes by.`,
	source: definition,
	inputs: {
		steps: { label: say`Steps of a round`, unit: "min" },
		kinds: { label: say`How the pieces are treated`, unit: "" },
	},
	example: {
		inputs: {
			steps: [
				{ step: "wash", basis: "kit", minutes: 12, hands_on: "yes" },
				{ step: "soak", basis: "load", minutes: 20, hands_on: "no", method: "chlorine" },
				{ step: "boil", basis: "load", minutes: 20, hands_on: "no", method: "boiling" },
			],
			kinds: [{ methods: ["boiling"], pieces: [] }],
		},
		result: [
			{ step: "wash", basis: "kit", minutes: 12, hands_on: "yes" },
			{ step: "boil", basis: "load", minutes: 20, hands_on: "no", method: "boiling" },
		],
		within: 0,
	},
	compute: ({ steps, kinds }) =>
		steps.filter(({ method }) => !method || kinds.some(({ methods }) => methods.includes(method))),
});
