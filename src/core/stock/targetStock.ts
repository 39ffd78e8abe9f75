import { scaled } from "../amounts.ts";
import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { wastageInput, withWastage } from "./withWastage.ts";

/** What has to be on hand or on its way (the order-up-to level) so that stock lasts until the next order has come in. */
export const targetStock = calculation<{ use: number; wastagePct: number }, number>({
	key: "target_stock",
	label: say`Target stock`,
	unit: say`in the item's measure`,
	formula: say`Use to prepare for over delivery days and days between orders, as surely as the item is to last, ÷ (1 − wastage).`,
	source: sources.losses,
	inputs: {
		use: {
			label: say`Use over delivery days and days between orders, prepare for`,
			unit: say`in the item's measure`,
			min: 0,
		},
		wastagePct: wastageInput,
	},
	example: { inputs: { use: 90, wastagePct: 10 }, result: 100, within: 1e-9 },
	follows: {
		input: "use",
		turned: (amounts, { wastagePct }) => scaled(amounts, withWastage(1, wastagePct)),
	},
	compute: ({ use, wastagePct }) => withWastage(use, wastagePct),
});
