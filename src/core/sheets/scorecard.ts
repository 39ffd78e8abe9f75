import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const scorecardSheet = sheet({
	file: "scorecard.csv",
	title: say`How good the forecast was`,
	about: say`Each past day of the register forecast from the days before it, beside two simple ways.`,
	columns: {
		way: textColumn({ label: say`Way`, help: say`How the day was forecast.` }),
		days: computed({
			label: say`Days`,
			unit: say`days`,
			value: wholeAmount(),
			decimals: 0,
			help: say`That all three could forecast.`,
		}),
		chance_given: computed({
			label: say`Chance given to what came`,
			unit: "%",
			value: amount(),
			decimals: 2,
			help: say`Geometric mean; larger is better. 100 × e^(mean log score).`,
		}),
		inside_50: computed({
			label: say`Inside the middle half`,
			unit: say`% of days`,
			value: amount(),
			decimals: 0,
			help: say`Should be near 50, or more where counts are small.`,
		}),
		inside_90: computed({
			label: say`Inside nine of ten`,
			unit: say`% of days`,
			value: amount(),
			decimals: 0,
			help: say`Should be near 90, or more where counts are small.`,
		}),
		remark: textColumn({ label: say`In words`, help: say`What it means.` }),
	},
});
