import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

export const wardUseSheet = sheet({
	file: "ward-use.csv",
	title: "Product for the ward's other solution",
	about:
		"From the product in use, on the first day and over the whole plan. Not part of the kits' figures; part of what is ordered.",
	columns: {
		use: computed({ label: "Used for", unit: "", value: words(), help: "As listed." }),
		litres_per_day: computed({
			label: "Litres a day",
			unit: "L/day",
			value: amount(),
			decimals: 1,
			help: "Mixed once a day.",
		}),
		product_quantity: computed({
			label: "Product a day",
			unit: "in the measure beside it",
			value: amount(),
			decimals: 0,
			help: "On the first day, rounded up to what you can measure.",
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
		plan_quantity: computed({
			label: "Product over the plan",
			unit: "in the measure beside it",
			value: amount(),
			decimals: 0,
			help: "All days, as the lot fades.",
		}),
	},
});
