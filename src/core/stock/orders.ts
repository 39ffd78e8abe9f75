import { calculation } from "../calculation.ts";
import { fixed } from "../fixed.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/** What has to be on hand or on its way (the order-up-to level) so that stock lasts until the next order has come in. */
export const targetStock = calculation<{ use: number; wastagePct: number }, number>({
	key: "target_stock",
	label: say`Target stock`,
	unit: say`in the item's measure`,
	formula: say`What use over lead and review days sets aside, at the item's service level, ÷ (1 − wastage).`,
	source: sources.losses,
	inputs: {
		use: {
			label: say`Use over lead and review days, set aside`,
			unit: say`in the item's measure`,
			min: 0,
		},
		wastagePct: { label: say`Wastage`, unit: "%", min: 0, max: 99 },
	},
	example: { inputs: { use: 90, wastagePct: 10 }, result: 100, within: 1e-9 },
	compute: ({ use, wastagePct }) => use / (1 - wastagePct / 100),
});

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
	formula: say`(Target stock − usable − on order) ÷ pack size; none where stock is enough.`,
	source: sources.periodicReview,
	rounding: say`Up to whole packs.`,
	inputs: {
		target: { label: say`Target stock`, unit: say`in the item's measure`, min: 0 },
		usable: { label: say`Usable stock`, unit: say`in the item's measure`, min: 0 },
		onOrder: { label: say`On order`, unit: say`in the item's measure`, min: 0 },
		packSize: { label: say`Pack size`, unit: say`in the item's measure`, min: 1e-9 },
	},
	example: {
		inputs: { target: 400, usable: 150, onOrder: 50, packSize: 100 },
		result: 2,
		within: 0,
	},
	compute: ({ target, usable, onOrder, packSize }) => packsFor(target - usable - onOrder, packSize),
});

const DAYS_PER_MONTH = 30.4;

/** How many months usable stock lasts at the mean use. */
export const monthsOfStock = calculation<{ usable: number; usePerDay: number }, number>({
	key: "months_of_stock",
	label: say`Months of stock`,
	unit: say`months`,
	formula: say`Usable stock ÷ (mean use a day × ${fixed(DAYS_PER_MONTH, 1)}).`,
	source: sources.monthsOfStock,
	inputs: {
		usable: { label: say`Usable stock`, unit: say`in the item's measure`, min: 0 },
		usePerDay: { label: say`Mean use a day`, unit: say`in the item's measure a day`, min: 1e-12 },
	},
	example: { inputs: { usable: 200, usePerDay: 100 / 30.4 }, result: 2, within: 1e-9 },
	compute: ({ usable, usePerDay }) => usable / (usePerDay * DAYS_PER_MONTH),
});
