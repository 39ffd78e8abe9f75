import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { day } from "./computedValues.ts";
import { measureColumns } from "./measureColumns.ts";
import { kitMeasures, solutionMeasures, supplyMeasures } from "./planMeasures.ts";
import { textColumn } from "./textColumn.ts";

/** One row a week: seven days from the first day of the plan on, the last one with what days are left. */
export const weekPlanSheet = sheet({
	file: "week-plan.csv",
	title: say`The plan, week by week`,
	about: say`What each week brings on average, and what to prepare for in the whole of it. That is worked out for the week itself; adding up its days would be too much.`,
	columns: {
		from: computed({ label: say`From`, unit: "", value: day(), help: say`First day of the week.` }),
		to: computed({ label: say`To`, unit: "", value: day(), help: say`Last day of the week.` }),
		...measureColumns(kitMeasures),
		...measureColumns(solutionMeasures),
		product_unit: textColumn({
			label: say`Product in`,
			coded: true,
			help: say`What the product is measured out in.`,
		}),
		...measureColumns(supplyMeasures),
	},
});
