import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { mixedAmount, seeUnit } from "./mixedAmount.ts";
import { measures } from "./planMeasures.ts";
import { textColumn } from "./textColumn.ts";

export const weekTotalSheet = sheet({
	file: "week-total.csv",
	title: say`The whole period`,
	about: say`Totals of the plan. What to prepare for in all is worked out for the total itself; adding up the days would be too much.`,
	columns: {
		measure_of: computed({
			label: say`Total of`,
			unit: "",
			value: choice(measures),
			help: say`What is added up.`,
		}),
		expected: mixedAmount({ label: say`Average`, unit: seeUnit, help: say`Mean of the total.` }),
		set_aside: mixedAmount({
			label: say`Prepare for`,
			unit: seeUnit,
			rounds: "up",
			help: say`Enough for the whole period as surely as the plan asks.`,
		}),
		unit: textColumn({
			label: say`Unit`,
			coded: true,
			help: say`Unit of both figures.`,
			added: true,
		}),
	},
});
