import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

/** Measures of the report that are always there, before the items of the store. */
export const monthMeasures = [
	"births",
	"kits_used",
	"needs_none_ready",
	"rounds",
	"kits_failed",
	"descalings",
	"solution_litres",
	"boiled_litres",
] as const;

export type MonthMeasure = (typeof monthMeasures)[number];

export const monthSheet = sheet({
	file: "month.csv",
	title: say`The month`,
	about: say`What was planned for the days of a month and what the record says was done. What nobody wrote down is not recorded, and never 0.`,
	columns: {
		measure: computed({
			label: say`Of`,
			unit: "",
			value: words(),
			coded: true,
			help: say`What is counted; after the first rows the items of the store.`,
		}),
		unit: computed({
			label: say`Unit`,
			unit: "",
			value: words(),
			coded: true,
			help: say`Unit of the figures.`,
		}),
		planned_expected: computed({
			label: say`Planned, average`,
			unit: say`see unit`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`The averages in the plans of the days, added up; blank where no plan was kept.`,
		}),
		planned_set_aside: computed({
			label: say`Planned, prepare for`,
			unit: say`see unit`,
			value: amount(),
			decimals: 1,
			mixed: true,
			rounds: "up",
			help: say`What was to be at hand day by day, added up.`,
		}),
		done: computed({
			label: say`Done`,
			unit: say`see unit`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`The sum of what was written down; blank where nothing was.`,
		}),
		note: computed({
			label: say`Note`,
			unit: "",
			value: words(),
			help: say`On how many days it was recorded.`,
		}),
	},
});
