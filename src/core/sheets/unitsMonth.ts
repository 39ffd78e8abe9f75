import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { wholeAmount } from "./computedValues.ts";
import { monthSheet } from "./month.ts";
import { change, month } from "./unitsTrend.ts";

const { measure, unit, planned_expected, planned_set_aside, done } = monthSheet.columns;

const unitCount = (label: string, help: string) =>
	computed({ label, unit: say`units`, value: wholeAmount(), decimals: 0, help });

export const unitsMonthSheet = sheet({
	file: "units-month.csv",
	title: say`The district's months`,
	about: say`The units' months added up. Units that wrote nothing down are not in a sum, so beside each sum stands how many it comes from.`,
	columns: {
		month: month(),
		measure,
		measure_unit: unit,
		units_planned: unitCount(say`Units with a plan`, say`How many kept a plan of that month.`),
		planned_expected,
		planned_set_aside,
		units_done: unitCount(say`Units with a record`, say`How many wrote down what was done.`),
		done,
		units_both: unitCount(
			say`Units of the change`,
			say`How many recorded this month and the one before.`,
		),
		change: change(say`From the month before, of the units that recorded both.`),
	},
});
