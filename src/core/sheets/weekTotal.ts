import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { amount, words } from "./computedValues.ts";
import { measures } from "./planMeasures.ts";

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
		expected: computed({
			label: say`Average`,
			unit: say`see unit`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`Mean of the total.`,
		}),
		set_aside: computed({
			label: say`Prepare for`,
			unit: say`see unit`,
			value: amount(),
			decimals: 1,
			mixed: true,
			rounds: "up",
			help: say`Enough for the whole period as surely as the plan asks.`,
		}),
		unit: computed({
			label: say`Unit`,
			unit: "",
			value: words(),
			coded: true,
			help: say`Unit of both figures.`,
			added: true,
		}),
	},
});
