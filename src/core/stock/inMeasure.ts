import { scaled } from "../amounts.ts";
import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";

interface Inputs {
	readonly quantity: number;
	readonly from: string;
	readonly to: string;
}

/** How a measure may be written, what it measures, and how much of the base measure it is. */
const measures: Record<string, { base: string; size: number }> = {
	ml: { base: "mL", size: 1 },
	l: { base: "mL", size: 1000 },
	litre: { base: "mL", size: 1000 },
	litres: { base: "mL", size: 1000 },
	g: { base: "g", size: 1 },
	kg: { base: "g", size: 1000 },
	tablet: { base: "tablet", size: 1 },
	tablets: { base: "tablet", size: 1 },
	comprimé: { base: "tablet", size: 1 },
	comprimés: { base: "tablet", size: 1 },
};

/** A quantity in the measure in which the store counts the item. */
export const inMeasure = calculation<Inputs, number>({
	key: "in_measure",
	label: say`Quantity in the store's measure`,
	unit: say`in the item's measure`,
	formula: say`1 L is 1\u202f000 mL; 1 kg is 1\u202f000 g.`,
	source: definition,
	inputs: {
		quantity: { label: say`Product`, unit: say`as measured out`, min: 0 },
		from: { label: say`Product is measured in`, unit: "" },
		to: { label: say`Measure`, unit: "" },
	},
	example: { inputs: { quantity: 790, from: "mL", to: "L" }, result: 0.79, within: 1e-12 },
	follows: {
		input: "quantity",
		turned: (amounts, { from, to }) => scaled(amounts, inStore(1, from, to) ?? Number.NaN),
	},
	compute: ({ quantity, from, to }) =>
		inStore(quantity, from, to) ??
		refuse({
			code: "measure-mismatch",
			received: to,
			allowed: say`mL or L for a liquid, g or kg for powder, tablet for tablets`,
			message: say`The product in use is measured in ${from}, and the store counts it in "${to}".`,
			place: { file: "items.csv", line: null, column: "measure" },
		}),
});

function inStore(quantity: number, from: string, to: string): number | undefined {
	const source = measures[from.trim().toLowerCase()];
	const target = measures[to.trim().toLowerCase()];
	return source && target && source.base === target.base
		? (quantity * source.size) / target.size
		: undefined;
}
