import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

export const stockSheet = sheet({
	file: "stock.csv",
	title: "Stock by lot",
	about:
		"What is on hand of each lot after the journal's entries, and what will go to waste. The lot that expires first leaves first.",
	columns: {
		item: computed({ label: "Item", unit: "", value: words(), help: "As listed under items." }),
		lot: computed({ label: "Lot", unit: "", value: words(), help: "Number on the box or bottle." }),
		measure: computed({
			label: "Measure",
			unit: "",
			value: words(),
			help: "Unit of the quantities.",
		}),
		on_hand: computed({
			label: "On hand",
			unit: "in the item's measure",
			value: amount(),
			decimals: 1,
			help: "The lot's quantity and everything in the journal since.",
		}),
		counted_difference: computed({
			label: "Counts against books",
			unit: "in the item's measure",
			value: words(),
			help: "More (+) or less (−) than the books said, all counts added up.",
		}),
		usable_until: computed({
			label: "Usable until",
			unit: "",
			value: words(),
			help: "Expiry, or the day it becomes too weak.",
		}),
		wasted: computed({
			label: "Will go to waste",
			unit: "in the item's measure",
			value: amount(),
			decimals: 1,
			help: "Not used by then, at the use expected.",
		}),
		remark: computed({ label: "Remark", unit: "", value: words(), help: "What to look out for." }),
	},
});
