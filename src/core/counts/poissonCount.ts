import { type Calculation, calculation } from "../calculation.ts";
import { say } from "../say.ts";
import type { Source } from "../source.ts";
import type { Counts } from "./counts.ts";
import { poisson } from "./poisson.ts";

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
		inputs: { mean: { label: say`${label}, average`, unit, min: 0, max: 1e7 } },
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
