import { scaled } from "./amounts.ts";
import { type Calculation, calculation } from "./calculation.ts";
import { inSentence } from "./inSentence.ts";
import { say } from "./say.ts";
import { definition, type Source } from "./source.ts";

interface Product {
	readonly count: number;
	readonly each: number;
}

/** A number of things times what each of them takes. */
export function countTimes(
	key: string,
	label: string,
	unit: string,
	count: { label: string; unit: string },
	each: { label: string; unit: string },
	source: Source = definition,
): Calculation<Product, number> {
	return calculation<Product, number>({
		key,
		label,
		unit,
		formula: say`${count.label} × ${inSentence(each.label)}.`,
		source,
		inputs: { count: { ...count, min: 0 }, each: { ...each, min: 0 } },
		example: { inputs: { count: 3, each: 2.5 }, result: 7.5, within: 0 },
		follows: { input: "count", turned: (amounts, product) => scaled(amounts, product.each) },
		compute: ({ count: n, each: amount }) => n * amount,
	});
}
