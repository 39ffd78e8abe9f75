import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, day, words } from "./computedValues.ts";

export const stockAheadSheet = sheet({
	file: "stock-ahead.csv",
	title: "Stock week by week",
	about:
		"Usable stock of each item at the end of each week ahead, at the use expected, against its reserve.",
	columns: {
		item: computed({ label: "Item", unit: "", value: words(), help: "As listed under items." }),
		date: computed({ label: "End of", unit: "", value: day(), help: "The day." }),
		usable: computed({
			label: "Usable",
			unit: "in the item's measure",
			value: amount(),
			decimals: 1,
			help: "What is left.",
		}),
		reserve: computed({
			label: "Reserve",
			unit: "in the item's measure",
			value: amount(),
			decimals: 1,
			help: "Target stock less use expected: kept for busy weeks.",
		}),
	},
});
