import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, day, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const waterSheet = sheet({
	file: "water.csv",
	title: say`Water to fetch`,
	about: say`All the water of a day: solution, soapy water, plain rinse, boiled rinse with what boils away, vinegar bath and its rinse.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`The day.` }),
		litres_expected: computed({
			label: say`Water, average`,
			unit: "L",
			value: amount(),
			decimals: 0,
			help: say`Mean of the day.`,
		}),
		litres_set_aside: computed({
			label: say`Water, prepare for`,
			unit: "L",
			value: amount(),
			decimals: 0,
			rounds: "up",
			help: say`Enough as surely as the plan asks.`,
		}),
		containers: computed({
			label: say`Containers`,
			unit: say`containers`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Of the unit's own size, to hold the water to prepare for.`,
		}),
		taken_from: textColumn({
			label: say`From`,
			help: say`Sources in their order, each up to what it gives.`,
		}),
		fuel_expected: computed({
			label: say`Fuel, average`,
			unit: say`in the measure beside it`,
			value: amount(),
			decimals: 1,
			help: say`To boil the water of the average loads, as this unit boils it.`,
			added: true,
		}),
		fuel_set_aside: computed({
			label: say`Fuel, prepare for`,
			unit: say`in the measure beside it`,
			value: amount(),
			decimals: 1,
			rounds: "up",
			help: say`To boil the water to prepare for.`,
			added: true,
		}),
		fuel_measure: textColumn({
			label: say`Measured in`,
			help: say`kg, or kWh of electricity.`,
			added: true,
		}),
	},
});
