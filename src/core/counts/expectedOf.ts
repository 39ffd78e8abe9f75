import { type Calculation, calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { type Counts, mean } from "./counts.ts";

/** None with the chance 0.6, one with 0.3, two with 0.1: for the example. */
const few: Counts = { first: 0, chance: Float64Array.of(0.6, 0.3, 0.1) };

/** The mean of a count. */
export function expectedOf(
	key: string,
	label: string,
	unit: string,
): Calculation<{ counts: Counts }, number> {
	return calculation<{ counts: Counts }, number>({
		key,
		label: say`${label}, average`,
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
