import { type Calculation, calculation, type Example } from "./calculation.ts";
import { inSentence } from "./inSentence.ts";
import { say } from "./say.ts";
import type { Source } from "./source.ts";

/** One part of a result that has several, as a calculation of its own, so that its cell can be asked "why?". */
export function partOf<Whole extends object, K extends keyof Whole & string>(
	whole: {
		readonly label: string;
		readonly source: Source;
		readonly example: Example<unknown, Whole>;
	},
	key: K,
	label: string,
	unit: string,
): Calculation<{ whole: Whole }, Whole[K]> {
	return calculation<{ whole: Whole }, Whole[K]>({
		key,
		label,
		unit,
		formula: say`Part of: ${inSentence(whole.label)}.`,
		source: whole.source,
		inputs: { whole: { label: whole.label, unit: "" } },
		example: {
			inputs: { whole: whole.example.result },
			result: whole.example.result[key],
			within: whole.example.within,
		},
		compute: ({ whole: all }) => all[key],
	});
}
