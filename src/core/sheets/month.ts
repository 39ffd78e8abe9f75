import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { mixedAmount, seeUnit } from "./mixedAmount.ts";
import { textColumn } from "./textColumn.ts";

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
		measure: textColumn({
			label: say`Of`,
			coded: true,
			help: say`What is counted; after the first rows the items of the store.`,
		}),
		unit: textColumn({ label: say`Unit`, coded: true, help: say`Unit of the figures.` }),
		planned_expected: mixedAmount({
			label: say`Planned, average`,
			unit: seeUnit,
			help: say`The averages in the plans of the days, added up; blank where no plan was kept.`,
		}),
		planned_set_aside: mixedAmount({
			label: say`Planned, prepare for`,
			unit: seeUnit,
			rounds: "up",
			help: say`What was to be at hand day by day, added up.`,
		}),
		done: mixedAmount({
			label: say`Done`,
			unit: seeUnit,
			help: say`The sum of what was written down; blank where nothing was.`,
		}),
		note: textColumn({ label: say`Note`, help: say`On how many days it was recorded.` }),
	},
});
