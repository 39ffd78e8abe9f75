import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, day, words } from "./computedValues.ts";

export const forecastSheet = sheet({
	file: "forecast.csv",
	title: "Births to come",
	about:
		"What the plan expects on each day, where the figure is from, and how far a day may well be from it.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "The day." }),
		births_expected: computed({
			label: "Births, expected",
			unit: "births",
			value: amount(),
			decimals: 1,
			help: "Mean of the day.",
		}),
		taken_from: computed({
			label: "From",
			unit: "",
			value: words(),
			help: "Your figure, the register's forecast, or births a day from the settings.",
		}),
		low_50: computed({
			label: "Half of such days from",
			unit: "births",
			value: amount(),
			decimals: 0,
			help: "Lower end of the middle half.",
		}),
		high_50: computed({
			label: "to",
			unit: "births",
			value: amount(),
			decimals: 0,
			help: "Upper end of the middle half.",
		}),
		low_90: computed({
			label: "Nine of ten from",
			unit: "births",
			value: amount(),
			decimals: 0,
			help: "Lower end of nine days of ten.",
		}),
		high_90: computed({
			label: "up to",
			unit: "births",
			value: amount(),
			decimals: 0,
			help: "Upper end of nine days of ten.",
		}),
	},
});
