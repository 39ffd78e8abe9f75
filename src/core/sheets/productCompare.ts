import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const productCompareSheet = sheet({
	file: "product-compare.csv",
	title: "Comparing the products",
	about:
		"The same litres of solution from each product the unit can get, ordered fresh, at the order interval that costs least.",
	columns: {
		product: computed({ label: "Product", unit: "", value: words(), help: "Chlorine product." }),
		period: computed({
			label: "Over",
			unit: "",
			value: words(),
			help: "A week or a quarter of 91 days.",
		}),
		litres: computed({
			label: "Solution",
			unit: "L",
			value: amount(),
			decimals: 0,
			help: "Expected, the same for every product.",
		}),
		order_every_days: computed({
			label: "Order every",
			unit: "days",
			value: wholeAmount(),
			decimals: 0,
			help: "Of those tried, the interval that costs least; the longest where the cost is the same.",
		}),
		quantity: computed({
			label: "Product",
			unit: "in the measure beside it",
			value: amount(),
			decimals: 0,
			help: "Needed over the period, as it fades.",
		}),
		measure: computed({ label: "Measured in", unit: "", value: words(), help: "mL, g or tablet." }),
		packs: computed({
			label: "Packs",
			unit: "packs",
			value: amount(),
			decimals: 1,
			help: "Whole packs at each order, averaged over the period.",
		}),
		cost: computed({
			label: "Cost",
			unit: "currency",
			value: amount(),
			decimals: 2,
			help: "Of those packs.",
		}),
		weight_kg: computed({
			label: "To carry",
			unit: "kg",
			value: amount(),
			decimals: 1,
			help: "Of the product; blank for tablets, whose weight is not their chlorine.",
		}),
		lost_g: computed({
			label: "Lost to fading",
			unit: "g chlorine",
			value: amount(),
			decimals: 0,
			help: "Available chlorine that was paid for and faded before use.",
		}),
	},
});
