import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

export const wallTableSheet = sheet({
	file: "wall-table.csv",
	title: "Mixing table for the wall",
	about:
		"How much product for how many litres, for each lot in the store on the first day of the plan. Make a new one when the lot changes.",
	columns: {
		product: computed({ label: "Product", unit: "", value: words(), help: "Chlorine product." }),
		lot: computed({ label: "Lot", unit: "", value: words(), help: "Blank: by the label." }),
		litres: computed({
			label: "Make up to",
			unit: "L",
			value: amount(),
			decimals: 1,
			help: "Size of the container.",
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
		exact_litres: computed({
			label: "Exact for",
			unit: "L",
			value: amount(),
			decimals: 2,
			help: "Litres for which this much product makes just the strength wanted.",
		}),
	},
});
