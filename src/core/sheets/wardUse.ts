import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";
import { textColumn } from "./textColumn.ts";

// The litres of a use are its litres a day.
const { litres: _, ...mixed } = preparationColumns;

export const wardUseSheet = sheet({
	file: "ward-use.csv",
	title: say`Product for the ward's other solution`,
	about: say`From the product in use, on the first day and over the whole plan. Not part of the kits' figures; part of what is ordered.`,
	columns: {
		use: textColumn({ label: say`Used for`, help: say`As listed.` }),
		litres_per_day: computed({
			label: say`Litres a day`,
			unit: say`L/day`,
			value: amount(),
			decimals: 1,
			help: say`Mixed once a day.`,
		}),
		...mixed,
		plan_quantity: computed({
			label: say`Product over the plan`,
			unit: say`in the measure beside it`,
			value: amount(),
			decimals: 0,
			help: say`All days; the lot loses strength meanwhile.`,
		}),
	},
});
