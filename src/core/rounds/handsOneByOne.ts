import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import type { Step } from "./step.ts";

/** People who reprocess kits one by one, and the minutes it takes. */
export interface Hands {
	readonly people: number;
	/** Minutes a person is busy with a kit. */
	readonly workMinutes: number;
	/** Minutes it is left alone besides. */
	readonly aloneMinutes: number;
}

/** Whether no kit ever waits for somebody. */
export function areAlwaysFree({ people, workMinutes }: Hands): boolean {
	return !Number.isFinite(people) || workMinutes === 0;
}

interface Inputs {
	readonly steps: readonly Step[];
	readonly people: number;
	readonly soakAlone: "yes" | "no";
}

/** How long one kit keeps one person busy, and how long it is left alone. */
export const handsOneByOne = calculation<Inputs, Hands>({
	key: "hands_one_by_one",
	label: say`Work on a kit after each use`,
	unit: "",
	formula: say`A person stays with a kit through all steps of a round with one kit. Where a kit is left alone, the steps in which nobody is busy do not count.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of a round`, unit: "min" },
		people: { label: say`People in a round`, unit: say`people`, min: 1 },
		soakAlone: { label: say`A kit in the soak is left alone`, unit: "" },
	},
	example: {
		inputs: {
			steps: [
				{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes" },
				{ step: "soak", basis: "load", minutes: 20, hands_on: "no" },
			],
			people: 2,
			soakAlone: "yes",
		},
		result: { people: 2, workMinutes: 15, aloneMinutes: 20 },
		within: 0,
	},
	compute: ({ steps, people, soakAlone }) => {
		const minutes = (handsOn: Step["hands_on"]) =>
			steps.reduce((sum, step) => sum + (step.hands_on === handsOn ? step.minutes : 0), 0);
		if (steps.length === 0) return refuse(noSteps());
		return soakAlone === "yes"
			? { people, workMinutes: minutes("yes"), aloneMinutes: minutes("no") }
			: { people, workMinutes: minutes("yes") + minutes("no"), aloneMinutes: 0 };
	},
});

/** The same where water is boiled once a kit waits: it is left alone until its water is cool, and then worked on. */
export const handsAfterWater = calculation<{ hands: Hands; waterMinutes: number }, Hands>({
	key: "hands_after_water",
	label: say`Work on a kit after each use`,
	unit: "",
	formula: say`Time left alone + heating, hold and cooling of its water.`,
	source: commonPractice,
	inputs: {
		hands: { label: say`Work on a kit after each use`, unit: "" },
		waterMinutes: { label: say`From lighting the fire to cool water`, unit: "min", min: 0 },
	},
	example: {
		inputs: { hands: { people: 1, workMinutes: 90, aloneMinutes: 20 }, waterMinutes: 500 },
		result: { people: 1, workMinutes: 90, aloneMinutes: 520 },
		within: 0,
	},
	compute: ({ hands, waterMinutes }) => ({
		...hands,
		aloneMinutes: hands.aloneMinutes + waterMinutes,
	}),
});

/** From the moment somebody takes up a kit to its being ready. */
export const minutesOneByOne = calculation<{ hands: Hands }, number>({
	key: "minutes_one_by_one",
	label: say`Minutes until the kits of a round are ready`,
	unit: "min",
	formula: say`Minutes a person is busy with a kit, and those it is left alone; before that it may have to wait for somebody.`,
	source: commonPractice,
	inputs: { hands: { label: say`Work on a kit after each use`, unit: "" } },
	example: {
		inputs: { hands: { people: 1, workMinutes: 90, aloneMinutes: 20 } },
		result: 110,
		within: 0,
	},
	compute: ({ hands }) => hands.workMinutes + hands.aloneMinutes,
});

/** Without steps nothing can be said of any round. */
export function noSteps() {
	return {
		code: "no-steps",
		received: say`no steps`,
		allowed: say`at least one step`,
		message: say`The steps of a round are not listed, so its minutes are not known.`,
		place: { file: "steps.csv", line: null, column: "" },
	};
}
