import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

export const supplyUseSheet = sheet({
	file: "supply-use.csv",
	title: say`What the plan uses up`,
	about: say`Each item over the whole period of the plan.`,
	columns: {
		item: computed({
			label: say`Item`,
			unit: "",
			value: words(),
			help: say`As listed under items.`,
		}),
		measure: computed({
			label: say`Measure`,
			unit: "",
			value: words(),
			coded: true,
			help: say`Unit of both figures.`,
		}),
		expected: computed({
			label: say`Average`,
			unit: say`in the item's measure`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`Mean use.`,
		}),
		set_aside: computed({
			label: say`Prepare for`,
			unit: say`in the item's measure`,
			value: amount(),
			decimals: 1,
			mixed: true,
			rounds: "up",
			help: say`Enough as surely as the plan asks.`,
		}),
	},
});
