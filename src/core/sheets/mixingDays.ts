import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { day, words } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";

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
		...preparationColumns,
	},
});
