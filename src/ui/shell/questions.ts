import { say } from "../../core/say.ts";
import { computedSheets } from "../../core/sheets/computedSheets.ts";
import { typedSheets } from "../../core/sheets/typedSheets.ts";
import { BEGIN, THIS_WEEK } from "./pageTitles.ts";

export interface Question {
	readonly question: string;
	/** Files of the workbook, in reading order. */
	readonly sheets: readonly string[];
}

const files = new Set([...typedSheets, ...computedSheets].map((sheet) => sheet.file));

const inOrder: readonly Question[] = [
	{
		question: say`This week`,
		sheets: [THIS_WEEK, "tonight.csv", "day-plan.csv", "week-total.csv", BEGIN],
	},
	{
		question: say`What is coming?`,
		sheets: ["forecast.csv", "births.csv", "records.csv", "scorecard.csv", "hours.csv"],
	},
	{
		question: say`What must be ready?`,
		sheets: [
			"kit-cover.csv",
			"levers.csv",
			"day-cover.csv",
			"run-sheet.csv",
			"kit-register.csv",
			"checks.csv",
			"kit-history",
			"kits.csv",
			"rounds.csv",
			"kind-use.csv",
		],
	},
	{
		question: say`What do we mix and boil?`,
		sheets: [
			"mixing.csv",
			"mixing-days.csv",
			"labels",
			"wall-table.csv",
			"strength.csv",
			"strength-readings.csv",
			"product-compare.csv",
			"boiling.csv",
			"water.csv",
			"ward-solution.csv",
			"ward-use.csv",
		],
	},
	{
		question: say`What do we fetch?`,
		sheets: [
			"storekeeper",
			"order.csv",
			"supply-use.csv",
			"stock.csv",
			"stock-ahead.csv",
			"lots.csv",
			"journal.csv",
			"several-units",
			"costs.csv",
		],
	},
	{
		question: say`How we work here`,
		sheets: [
			"unit.csv",
			"what-if",
			"kept-settings.csv",
			"steps.csv",
			"usage.csv",
			"items.csv",
			"chlorine.csv",
			"kinds.csv",
			"water-sources.csv",
			"disagreements",
		],
	},
];

/**
 * The order of the workbook: the questions people ask, and the sheets that answer
 * them. A sheet that has no place yet stands last, so that none is out of reach.
 */
export const questions: readonly Question[] = inOrder.map(({ question, sheets }, at) => ({
	question,
	sheets: [...sheets, ...(at === inOrder.length - 1 ? unplaced() : [])],
}));

function unplaced(): string[] {
	const placed = new Set(inOrder.flatMap(({ sheets }) => sheets));
	return [...files].filter((file) => !placed.has(file));
}
