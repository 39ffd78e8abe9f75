import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const dayCoverSheet = sheet({
	file: "day-cover.csv",
	title: "Through the day",
	about:
		"Kits expected ready at each hour of the plan's busiest day, and how many of 1,000 needs at that hour would find none: the weak hours show.",
	columns: {
		kind: computed({
			label: "Kind",
			unit: "",
			value: words(),
			help: "Blank where all kits are alike.",
		}),
		hour: computed({
			label: "Hour",
			unit: "h",
			value: wholeAmount(),
			decimals: 0,
			help: "The figures hold for half past.",
		}),
		ready_expected: computed({
			label: "Kits ready, expected",
			unit: "kits",
			value: amount(),
			decimals: 1,
			help: "Mean number ready at half past the hour.",
		}),
		none_ready_per_1000: computed({
			label: "Needs that find none ready",
			unit: "per 1,000 at that hour",
			value: amount(),
			decimals: 3,
			help: "Smaller is safer.",
		}),
	},
});
