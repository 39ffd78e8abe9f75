import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";

// The litres of a use are its litres a day.
const { litres: _, ...mixed } = preparationColumns;

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
		...mixed,
		plan_quantity: computed({
			label: "Product over the plan",
			unit: "in the measure beside it",
			value: amount(),
			decimals: 0,
			help: "All days, as the lot fades.",
		}),
	},
});
