import { computed } from "../column.ts";
import { say } from "../say.ts";
import { amount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

/** What every mixing sheet says of one preparation. */
export const preparationColumns = {
	litres: computed({
		label: say`Make up to`,
		unit: "L",
		value: amount(),
		decimals: 1,
		help: say`Soak and wiping together.`,
	}),
	product_quantity: computed({
		label: say`Product to measure`,
		unit: say`in the measure beside it`,
		value: amount(),
		decimals: 0,
		help: say`Rounded up to what you can measure.`,
	}),
	product_measure: textColumn({
		label: say`Measured in`,
		coded: true,
		help: say`mL, g or tablet.`,
	}),
	water_litres: computed({
		label: say`Water`,
		unit: "L",
		value: amount(),
		decimals: 2,
		help: say`Measure the water first, then put the product into it.`,
	}),
	strength_made_pct: computed({
		label: say`Strength made`,
		unit: "%",
		value: amount(),
		decimals: 3,
		help: say`After rounding the product up.`,
	}),
};
