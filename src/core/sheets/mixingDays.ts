import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, day, words } from "./computedValues.ts";

export const mixingDaysSheet = sheet({
	file: "mixing-days.csv",
	title: "Mixing, day by day",
	about:
		"One preparation with the product in use on each day, from the lot to use first. As the lot fades, more of it is measured out.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "The day." }),
		lot: computed({
			label: "Lot",
			unit: "",
			value: words(),
			help: "First to expire of those that can be used; blank: by the label.",
		}),
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
	},
});
