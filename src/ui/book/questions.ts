import { computedSheets } from "../../core/sheets/computedSheets.ts";
import { typedSheets } from "../../core/sheets/typedSheets.ts";

/** The one view that is made of several files; every other sheet goes by its file's name. */
export const THIS_WEEK = "this-week";

export interface Question {
	readonly question: string;
	/** Files of the workbook, in reading order. */
	readonly sheets: readonly string[];
}

const known = new Set([...typedSheets, ...computedSheets].map((sheet) => sheet.file)).add(
	THIS_WEEK,
);

const inOrder: readonly Question[] = [
	{
		question: "This week",
		sheets: [THIS_WEEK, "tonight.csv", "levers.csv", "day-plan.csv", "week-total.csv"],
	},
	{
		question: "What is coming?",
		sheets: ["births.csv", "records.csv", "hours.csv", "kind-use.csv"],
	},
	{
		question: "What must be ready?",
		sheets: [
			"kit-cover.csv",
			"day-cover.csv",
			"run-sheet.csv",
			"kit-register.csv",
			"kits.csv",
			"checks.csv",
			"rounds.csv",
		],
	},
	{
		question: "What do we mix and boil?",
		sheets: [
			"mixing.csv",
			"mixing-days.csv",
			"wall-table.csv",
			"strength.csv",
			"strength-readings.csv",
			"boiling.csv",
			"water.csv",
			"water-sources.csv",
			"ward-solution.csv",
			"ward-use.csv",
			"chlorine.csv",
			"product-compare.csv",
		],
	},
	{
		question: "What do we fetch?",
		sheets: ["supply-use.csv", "order.csv", "lots.csv", "usage.csv", "items.csv"],
	},
	{ question: "How we work here", sheets: ["unit.csv", "steps.csv", "kinds.csv"] },
];

/**
 * The order of the workbook: the questions people ask, and the sheets that answer
 * them. A sheet that has no place yet stands last, so that none is out of reach.
 */
export const questions: readonly Question[] = inOrder.map(({ question, sheets }, at) => ({
	question,
	sheets: [
		...sheets.filter((file) => known.has(file)),
		...(at === inOrder.length - 1 ? unplaced() : []),
	],
}));

function unplaced(): string[] {
	const placed = new Set(inOrder.flatMap(({ sheets }) => sheets));
	return [...known].filter((file) => !placed.has(file));
}
