import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { DAYS_PER_YEAR } from "../values/date.ts";

interface PowderInputs {
	readonly gramsPerGram: number;
	readonly days: number;
	readonly lossPointsPerYear: number;
}

/** Strength of a powder after some days: its percentage loses points by the year, never below 0. */
export const strengthOfPowder = calculation<PowderInputs, number>({
	key: "strength_of_powder",
	label: say`Strength of the powder today`,
	unit: "g/g",
	formula: say`Percentage on the label − points lost a year × years.`,
	source: sources.powderLoss,
	inputs: {
		gramsPerGram: { label: say`Strength on the label`, unit: "g/g", min: 0, max: 1 },
		days: { label: say`Days since it was made`, unit: say`days`, min: 0 },
		lossPointsPerYear: { label: say`Powder loses a year`, unit: say`points of %`, min: 0 },
	},
	example: {
		inputs: { gramsPerGram: 0.7, days: 730.5, lossPointsPerYear: 2 },
		result: 0.66,
		within: 1e-9,
	},
	compute: ({ gramsPerGram, days, lossPointsPerYear }) =>
		Math.max(0, gramsPerGram - ((lossPointsPerYear / 100) * days) / DAYS_PER_YEAR),
});
