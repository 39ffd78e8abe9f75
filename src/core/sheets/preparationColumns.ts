import { computed } from "../column.ts";
import { amount, words } from "./computedValues.ts";

/** What every mixing sheet says of one preparation. */
export const preparationColumns = {
	litres: computed({
		label: "Make up to",
		unit: "L",
		value: amount(),
		decimals: 1,
		help: "Soak and wiping together.",
	}),
	product_quantity: computed({
		label: "Product to measure",
		unit: "in the measure beside it",
		value: amount(),
		decimals: 0,
		help: "Rounded up to what you can measure.",
	}),
	product_measure: computed({
		label: "Measured in",
		unit: "",
		value: words(),
		help: "mL, g or tablet.",
	}),
	water_litres: computed({
		label: "Water",
		unit: "L",
		value: amount(),
		decimals: 2,
		help: "Measure the water first, then put the product into it.",
	}),
	strength_made_pct: computed({
		label: "Strength made",
		unit: "%",
		value: amount(),
		decimals: 3,
		help: "After rounding the product up.",
	}),
};
