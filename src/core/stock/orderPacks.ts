import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

interface PackInputs {
	readonly target: number;
	readonly usable: number;
	readonly onOrder: number;
	readonly packSize: number;
}

/** A need that comes out whole by division is not rounded up for the last bit. */
const ROUNDING_ERROR = 1e-9;

/** Whole packs for a need; none for no need. */
export function packsFor(need: number, packSize: number): number {
	return Math.max(0, Math.ceil(need / packSize - ROUNDING_ERROR));
}

/** Packs to order now. */
export const orderPacks = calculation<PackInputs, number>({
	key: "order_packs",
	label: say`Packs to order`,
	unit: say`packs`,
	formula: say`(Target stock − usable − on the way) ÷ pack size; none where stock is enough.`,
	source: sources.periodicReview,
	rounding: say`Up to whole packs.`,
	inputs: {
		target: { label: say`Target stock`, unit: say`in the item's measure`, min: 0 },
		usable: { label: say`Usable stock`, unit: say`in the item's measure`, min: 0 },
		onOrder: { label: say`On the way`, unit: say`in the item's measure`, min: 0 },
		packSize: { label: say`Pack size`, unit: say`in the item's measure`, min: 1e-9 },
	},
	example: {
		inputs: { target: 400, usable: 150, onOrder: 50, packSize: 100 },
		result: 2,
		within: 0,
	},
	compute: ({ target, usable, onOrder, packSize }) => packsFor(target - usable - onOrder, packSize),
});
