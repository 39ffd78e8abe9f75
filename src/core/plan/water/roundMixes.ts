import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { solutionKeeps } from "../../chlorine/solutionKeeps.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import type { RoundsRow } from "../../sheets/rounds.ts";
import { sources } from "../../sources.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";
import type { UnitFigures } from "../unitFigures.ts";

interface Inputs {
	readonly rounds: readonly Pick<GoodRow<RoundsRow>, "value">[];
	/** Start of the round. */
	readonly start: number;
	readonly made: "each_round" | "each_day";
	readonly lifeHours: number;
}

/** Whether the water boiled for a round has to do for a preparation too: 1 or 0, as if every round ran. */
const preparationsOfRound = calculation<Inputs, number>({
	key: "preparations_of_round",
	label: say`Preparations of the round`,
	unit: say`preparations`,
	formula: say`One in each round; where the solution is made once a day, in the first round of the day, and again in the first that starts when it is too old.`,
	source: sources.solutionLife,
	inputs: {
		rounds: { label: say`Rounds of the day`, unit: "" },
		start: { label: say`Round`, unit: "" },
		made: { label: say`Solution is made`, unit: "" },
		lifeHours: { label: say`A mixed solution may be used for`, unit: "h", min: 0 },
	},
	example: {
		inputs: {
			rounds: [420, 840, 1260].map((start) => ({ value: { start, label: "" } })),
			start: 1260,
			made: "each_day",
			lifeHours: 8,
		},
		result: 1,
		within: 0,
	},
	compute: ({ rounds, start, made, lifeHours }) => {
		if (made === "each_round") return 1;
		let madeAt = Number.NEGATIVE_INFINITY;
		for (const { value } of rounds) {
			const isTooOld = !solutionKeeps(value.start - madeAt, lifeHours);
			if (isTooOld) madeAt = value.start;
			if (value.start === start) return isTooOld ? 1 : 0;
		}
		return 0;
	},
});

export function roundMixes(
	{ read, timetable }: UnitFigures,
	{ round }: Pick<RoundPlan, "round">,
): Figure {
	return derive(preparationsOfRound, {
		rounds: timetable.rounds,
		start: nameFigure(say`Round`, round.value.start),
		made: read.settings.solution_made,
		lifeHours: read.settings.solution_life_hours,
	});
}
