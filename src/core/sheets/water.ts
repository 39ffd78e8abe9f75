import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, day, wholeAmount, words } from "./computedValues.ts";

export const waterSheet = sheet({
	file: "water.csv",
	title: "Water to fetch",
	about:
		"All the water of a day: solution, soapy water, plain rinse, boiled rinse with what boils away, vinegar bath and its rinse.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "The day." }),
		litres_expected: computed({
			label: "Water, expected",
			unit: "L",
			value: amount(),
			decimals: 0,
			help: "Mean of the day.",
		}),
		litres_set_aside: computed({
			label: "Water, set aside",
			unit: "L",
			value: amount(),
			decimals: 0,
			help: "Enough as surely as the plan asks.",
		}),
		containers: computed({
			label: "Containers",
			unit: "containers",
			value: wholeAmount(),
			decimals: 0,
			help: "Of the unit's own size, to hold what is set aside.",
		}),
		taken_from: computed({
			label: "From",
			unit: "",
			value: words(),
			help: "Sources in their order, each up to what it gives.",
		}),
	},
});
