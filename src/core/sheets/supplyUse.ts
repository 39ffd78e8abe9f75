import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";
import { textColumn } from "./textColumn.ts";

export const supplyUseSheet = sheet({
	file: "supply-use.csv",
	title: say`What the plan uses up`,
	about: say`Each item over the whole period of the plan.`,
	columns: {
		item: textColumn({ label: say`Item`, help: say`As listed under items.` }),
		measure: textColumn({ label: say`Measure`, coded: true, help: say`Unit of both figures.` }),
		expected: mixedAmount({ label: say`Average`, unit: inMeasure, help: say`Mean use.` }),
		set_aside: mixedAmount({
			label: say`Prepare for`,
			unit: inMeasure,
			rounds: "up",
			help: say`Enough as surely as the plan asks.`,
		}),
	},
});
