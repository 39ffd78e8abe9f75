import { computed } from "../column.ts";
import { methods } from "../methods/method.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, day, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const boilingSheet = sheet({
	file: "boiling.csv",
	title: say`Boiled water and fires`,
	about: say`Every fire by the clock: when to light the stove, how much to boil, in which pots, and for which round. Often it is the evening before.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`Day of the round.` }),
		round: textColumn({ label: say`Round`, help: say`Name, or time where it has none.` }),
		litres: computed({
			label: say`Water needed`,
			unit: "L",
			value: amount(),
			decimals: 0,
			help: say`For the rinse buckets of the loads to prepare for, where a round's water may need more than one fire; or for one load of pieces.`,
		}),
		batches: computed({
			label: say`Batches`,
			unit: say`batches`,
			value: wholeAmount(),
			decimals: 0,
			help: say`One after the other on the same fire.`,
		}),
		light_by: textColumn({
			label: say`Light the stove by`,
			unit: say`date h:min`,
			help: say`The first rinse less cooling, holding and heating; earlier where stove or pots are taken. For pieces: so that it boils, or steam is there, when the step begins that times it.`,
		}),
		hold_minutes: computed({
			label: say`Keep at the boil`,
			unit: "min",
			value: amount(),
			decimals: 0,
			help: say`Each batch, from a rolling boil; pieces as long as their method asks. Sources differ: see the settings.`,
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
			help: say`Covered, of itself, down to the temperature wanted; 0 where pieces are boiled or steamed, whose water is not used again.`,
		}),
		fuel: textColumn({ label: say`Fuel`, coded: true, help: say`Fuel and stove.` }),
		fuel_quantity: computed({
			label: say`Fuel needed`,
			unit: say`in the measure beside it`,
			value: amount(),
			decimals: 1,
			rounds: "up",
			help: say`Heating and holding.`,
		}),
		fuel_measure: textColumn({ label: say`Measured in`, help: say`kg, or kWh of electricity.` }),
		start_litres: computed({
			label: say`Start with`,
			unit: "L",
			value: amount(),
			decimals: 0,
			rounds: "up",
			help: say`Water needed and what boils away.`,
			added: true,
		}),
		cool_by: textColumn({
			label: say`Cool by`,
			unit: say`date h:min`,
			help: say`Then it is used, or poured into a disinfected, covered vessel, and its pots are free. Blank where pieces are boiled or steamed: nothing waits for their water.`,
			added: true,
		}),
		stove: computed({
			label: say`Stove`,
			unit: "",
			value: wholeAmount(),
			decimals: 0,
			help: say`Which one, where there are several.`,
			added: true,
		}),
		pots: textColumn({ label: say`Pots`, help: say`Which ones, by number.`, added: true }),
		only_if: textColumn({ label: say`Only if`, help: say`Blank: lit in any case.`, added: true }),
		pieces: computed({
			label: say`Pieces on the fire`,
			unit: "",
			value: optional(choice(methods)),
			help: say`How a load of pieces is disinfected on this fire; blank where water is boiled to rinse with.`,
			added: true,
		}),
	},
});
