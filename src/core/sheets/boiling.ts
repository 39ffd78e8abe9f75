import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, day, wholeAmount, words } from "./computedValues.ts";

export const boilingSheet = sheet({
	file: "boiling.csv",
	title: say`Boiled water for the rinse`,
	about: say`For each round: how much to boil, and when to light the stove so that it is cool in time. Often that is the evening before.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`Day of the round.` }),
		round: computed({
			label: say`Round`,
			unit: "",
			value: words(),
			help: say`Name, or time where it has none.`,
		}),
		litres: computed({
			label: say`Water needed`,
			unit: "L",
			value: amount(),
			decimals: 0,
			help: say`For the rinse buckets of the loads set aside.`,
		}),
		batches: computed({
			label: say`Batches`,
			unit: say`batches`,
			value: wholeAmount(),
			decimals: 0,
			help: say`One after the other on the same fire.`,
		}),
		light_by: computed({
			label: say`Light the stove by`,
			unit: say`date h:min`,
			value: words(),
			help: say`The first rinse less cooling, holding and heating.`,
		}),
		hold_minutes: computed({
			label: say`Keep at the boil`,
			unit: "min",
			value: amount(),
			decimals: 0,
			help: say`Each batch, from a rolling boil. Sources differ: see the setting.`,
		}),
		boiling_point_c: computed({
			label: say`Boiling point`,
			unit: "°C",
			value: amount(),
			decimals: 1,
			help: say`At the unit's height above the sea.`,
		}),
		heat_minutes: computed({
			label: say`Heating`,
			unit: "min",
			value: amount(),
			decimals: 0,
			help: say`All batches together.`,
		}),
		cool_minutes: computed({
			label: say`Cooling`,
			unit: "min",
			value: amount(),
			decimals: 0,
			help: say`Covered, of itself, down to the temperature wanted.`,
		}),
		fuel: computed({
			label: say`Fuel`,
			unit: "",
			value: words(),
			coded: true,
			help: say`Fuel and stove.`,
		}),
		fuel_quantity: computed({
			label: say`Fuel needed`,
			unit: say`in the measure beside it`,
			value: amount(),
			decimals: 1,
			rounds: "up",
			help: say`Heating and holding.`,
		}),
		fuel_measure: computed({
			label: say`Measured in`,
			unit: "",
			value: words(),
			help: say`kg, or kWh of electricity.`,
		}),
		start_litres: computed({
			label: say`Start with`,
			unit: "L",
			value: amount(),
			decimals: 0,
			rounds: "up",
			help: say`Water needed and what boils away.`,
			added: true,
		}),
	},
});
