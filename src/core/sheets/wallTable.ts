import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";

export const wallTableSheet = sheet({
	file: "wall-table.csv",
	title: "Mixing table for the wall",
	about:
		"How much product for how many litres, for each lot in the store on the first day of the plan. As a lot fades the amounts grow: make a new one each week and whenever the lot changes.",
	columns: {
		product: computed({ label: "Product", unit: "", value: words(), help: "Chlorine product." }),
		lot: computed({ label: "Lot", unit: "", value: words(), help: "Blank: by the label." }),
		...preparationColumns,
		exact_litres: computed({
			label: "Exact for",
			unit: "L",
			value: amount(),
			decimals: 2,
			help: "Litres for which this much product makes just the strength wanted.",
		}),
	},
});
