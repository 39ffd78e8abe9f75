import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, day, wholeAmount, words } from "./computedValues.ts";

export const boilingSheet = sheet({
	file: "boiling.csv",
	title: "Boiled water for the rinse",
	about:
		"For each round: how much to boil, and when to light the stove so that it is cool in time. Often that is the evening before.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "Day of the round." }),
		round: computed({
			label: "Round",
			unit: "",
			value: words(),
			help: "Name, or time where it has none.",
		}),
		litres: computed({
			label: "Water needed",
			unit: "L",
			value: amount(),
			decimals: 0,
			help: "For the rinse buckets of the loads set aside.",
		}),
		batches: computed({
			label: "Batches",
			unit: "batches",
			value: wholeAmount(),
			decimals: 0,
			help: "One after the other on the same fire.",
		}),
		light_by: computed({
			label: "Light the stove by",
			unit: "date h:min",
			value: words(),
			help: "The first rinse less cooling, holding and heating.",
		}),
		hold_minutes: computed({
			label: "Keep at the boil",
			unit: "min",
			value: amount(),
			decimals: 0,
			help: "Each batch, from a rolling boil. Sources differ: see the setting.",
		}),
		boiling_point_c: computed({
			label: "Boiling point",
			unit: "°C",
			value: amount(),
			decimals: 1,
			help: "At the unit's height above the sea.",
		}),
		heat_minutes: computed({
			label: "Heating",
			unit: "min",
			value: amount(),
			decimals: 0,
			help: "All batches together.",
		}),
		cool_minutes: computed({
			label: "Cooling",
			unit: "min",
			value: amount(),
			decimals: 0,
			help: "Covered, of itself, down to the temperature wanted.",
		}),
		fuel: computed({ label: "Fuel", unit: "", value: words(), help: "Fuel and stove." }),
		fuel_quantity: computed({
			label: "Fuel needed",
			unit: "in the measure beside it",
			value: amount(),
			decimals: 1,
			help: "Heating and holding.",
		}),
		fuel_measure: computed({
			label: "Measured in",
			unit: "",
			value: words(),
			help: "kg, or kWh of electricity.",
		}),
		start_litres: computed({
			label: "Start with",
			unit: "L",
			value: amount(),
			decimals: 1,
			help: "Water needed and what boils away.",
			added: true,
		}),
	},
});
