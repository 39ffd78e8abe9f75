import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { day } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";
import { textColumn } from "./textColumn.ts";

export const mixingDaysSheet = sheet({
	file: "mixing-days.csv",
	title: say`Mixing, day by day`,
	about: say`One preparation with the product in use on each day, from the lot to use first. As the lot loses strength, more of it is measured out.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`The day.` }),
		lot: textColumn({
			label: say`Lot`,
			help: say`First to expire of those that can be used; blank: by the label.`,
		}),
		...preparationColumns,
	},
});
