import { calculation } from "../calculation.ts";
import { fixed } from "../fixed.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

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
