import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const scorecardSheet = sheet({
	file: "scorecard.csv",
	title: "How good the forecast was",
	about: "Each past day of the register forecast from the days before it, beside two simple ways.",
	columns: {
		way: computed({ label: "Way", unit: "", value: words(), help: "How the day was forecast." }),
		days: computed({
			label: "Days",
			unit: "days",
			value: wholeAmount(),
			decimals: 0,
			help: "That all three could forecast.",
		}),
		chance_given: computed({
			label: "Chance given to what came",
			unit: "%",
			value: amount(),
			decimals: 2,
			help: "Geometric mean; larger is better. 100 × e^(mean log score).",
		}),
		inside_50: computed({
			label: "Inside the middle half",
			unit: "% of days",
			value: amount(),
			decimals: 0,
			help: "Should be near 50, or more where counts are small.",
		}),
		inside_90: computed({
			label: "Inside nine of ten",
			unit: "% of days",
			value: amount(),
			decimals: 0,
			help: "Should be near 90, or more where counts are small.",
		}),
		remark: computed({ label: "In words", unit: "", value: words(), help: "What it means." }),
	},
});
