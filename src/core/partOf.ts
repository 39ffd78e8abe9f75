import { type Calculation, calculation, type Example } from "./calculation.ts";
import { inSentence } from "./inSentence.ts";
import { say } from "./say.ts";
import type { Source } from "./sources.ts";

/** One part of a result that has several, as a calculation of its own, so that its cell can be asked "why?". */
export function partOf<Whole extends object, K extends keyof Whole & string>(
	whole: {
		readonly label: string;
		readonly source: Source;
		readonly example?: Example<unknown, Whole> | undefined;
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
		...(whole.example && { example: exampleOf(whole.example, key) }),
		compute: ({ whole: all }) => all[key],
	});
}

/** The whole's own example, of which this is a part. */
function exampleOf<Whole, K extends keyof Whole>(
	{ result, within }: Example<unknown, Whole>,
	key: K,
): Example<{ whole: Whole }, Whole[K]> {
	return { inputs: { whole: result }, result: result[key], within };
}
