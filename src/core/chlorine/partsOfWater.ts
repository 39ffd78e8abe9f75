import { calculation, refuse } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/** Parts of water to one part of a liquid product: stock ÷ target − 1. */
export const partsOfWater = calculation<{ stockPct: number; targetPct: number }, number>({
	key: "parts_of_water",
	label: say`Parts of water to one part of product`,
	unit: say`parts`,
	formula: say`Strength of the product ÷ strength wanted − 1.`,
	source: sources.dilution,
	inputs: {
		stockPct: { label: say`Strength of the product`, unit: "%", min: 0 },
		targetPct: { label: say`Strength wanted`, unit: "%", min: 1e-9 },
	},
	example: { inputs: { stockPct: 3.5, targetPct: 0.5 }, result: 6, within: 1e-9 },
	compute: ({ stockPct, targetPct }) =>
		stockPct < targetPct ? tooWeak(stockPct, targetPct) : stockPct / targetPct - 1,
});

/** Water can weaken a product, never strengthen it. */
export function tooWeak(stockPct: number, targetPct: number) {
	const holds = Number(stockPct.toPrecision(4));
	return refuse({
		code: "too-weak",
		received: say`${holds} %`,
		allowed: say`at least ${targetPct} %`,
		message: say`The product holds ${holds} % and ${targetPct} % is wanted; it cannot be made stronger. Use another lot or product.`,
	});
}
