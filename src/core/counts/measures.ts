import { type Calculation, calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice, definition, type Source } from "../sources.ts";
import { type Counts, mean, setAside } from "./counts.ts";
import { poisson } from "./poisson.ts";

export const confidenceInput = {
	label: say`How sure the plan should be`,
	unit: say`share`,
	min: 0.5,
	max: 0.9999,
};

/** None with the chance 0.6, one with 0.3, two with 0.1: for the examples. */
const few: Counts = { first: 0, chance: Float64Array.of(0.6, 0.3, 0.1) };

/** A Poisson count of something, from its mean. */
export function poissonCount(
	label: string,
	unit: string,
	source: Source,
): Calculation<{ mean: number }, Counts> {
	return calculation<{ mean: number }, Counts>({
		key: "poisson",
		label: say`${label}: how likely each number is`,
		unit,
		formula: say`Poisson counts with this mean: chance of k is mean^k · e^−mean ÷ k!`,
		source,
		inputs: { mean: { label: say`${label}, expected`, unit, min: 0, max: 1e7 } },
		example: {
			inputs: { mean: 0.1 },
			// e^−0.1 = 0.904837, then each the one before × 0.1 ÷ k.
			result: {
				first: 0,
				chance: Float64Array.of(0.904837, 0.0904837, 0.00452419, 0.000150806, 0.00000377016),
			},
			within: 1e-6,
		},
		compute: ({ mean: meanCount }) => poisson(meanCount),
	});
}

/** The mean of a count. */
export function expectedOf(
	key: string,
	label: string,
	unit: string,
): Calculation<{ counts: Counts }, number> {
	return calculation<{ counts: Counts }, number>({
		key,
		label: say`${label}, expected`,
		unit,
		formula: say`The mean: each number times its chance, added up.`,
		source: definition,
		inputs: { counts: { label: say`${label}: how likely each number is`, unit } },
		example: {
			inputs: { counts: few },
			result: 0.3 + 2 * 0.1,
			within: 1e-12,
		},
		compute: ({ counts }) => mean(counts),
	});
}

/** What to set aside of a count (its quantile). */
export function setAsideOf(
	key: string,
	label: string,
	unit: string,
): Calculation<{ counts: Counts; confidence: number }, number> {
	return calculation<{ counts: Counts; confidence: number }, number>({
		key,
		label: say`${label}, set aside`,
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
		compute: ({ counts, confidence }) => setAside(counts, confidence),
	});
}
