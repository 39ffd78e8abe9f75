import { type Calculation, calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { type Counts, setAside } from "./counts.ts";

export const confidenceInput = {
	label: say`How sure the plan should be`,
	unit: say`share`,
	min: 0.5,
	max: 0.9999,
};

/** None with the chance 0.6, one with 0.3, two with 0.1: for the example. */
const few: Counts = { first: 0, chance: Float64Array.of(0.6, 0.3, 0.1) };

/** What to set aside of a count (its quantile). */
export function setAsideOf(
	key: string,
	label: string,
	unit: string,
): Calculation<{ counts: Counts; confidence: number }, number> {
	return calculation<{ counts: Counts; confidence: number }, number>({
		key,
		label: say`${label}, prepare for`,
		unit,
		formula: say`The smallest number that is enough with at least the chance the plan asks for.`,
		source: commonPractice,
		rounding: say`A whole number, never rounded down.`,
		inputs: {
			counts: { label: say`${label}: how likely each number is`, unit },
			confidence: confidenceInput,
		},
		example: {
			// At most 0 has the chance 0.6, at most 1 has 0.9.
			inputs: { counts: few, confidence: 0.8 },
			result: 1,
			within: 0,
		},
		mayCome: ({ counts }) => ({ counts, size: 1 }),
		compute: ({ counts, confidence }) => setAside(counts, confidence),
	});
}
