import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, day } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const forecastSheet = sheet({
	file: "forecast.csv",
	title: say`Births to come`,
	about: say`The average that the plan goes by on each day, where the figure is from, and how far a day may well be from it.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`The day.` }),
		births_expected: computed({
			label: say`Births, average`,
			unit: say`births`,
			value: amount(),
			decimals: 1,
			help: say`Mean of the day.`,
		}),
		taken_from: textColumn({
			label: say`From`,
			help: say`Your figure, the register's forecast, or births a day from the settings.`,
		}),
		low_50: computed({
			label: say`Half of such days from`,
			unit: say`births`,
			value: amount(),
			decimals: 0,
			help: say`Lower end of the middle half.`,
		}),
		high_50: computed({
			label: say`to`,
			unit: say`births`,
			value: amount(),
			decimals: 0,
			help: say`Upper end of the middle half.`,
		}),
		low_90: computed({
			label: say`Nine of ten from`,
			unit: say`births`,
			value: amount(),
			decimals: 0,
			help: say`Lower end of nine days of ten.`,
		}),
		high_90: computed({
			label: say`up to`,
			unit: say`births`,
			value: amount(),
			decimals: 0,
			help: say`Upper end of nine days of ten.`,
		}),
	},
});
