/** A sheet's place in the rail: its file, or the one view that is made of several files. */
export const THIS_WEEK = "this-week";

export interface Question {
	readonly question: string;
	/** Files of the workbook, in reading order. */
	readonly sheets: readonly string[];
}

/** The order of the workbook: the questions people ask, and the sheets that answer them. */
export const questions: readonly Question[] = [
	{ question: "This week", sheets: [THIS_WEEK, "day-plan.csv", "week-total.csv"] },
	{ question: "What is coming?", sheets: ["births.csv", "records.csv", "hours.csv"] },
	{
		question: "What must be ready?",
		sheets: ["kit-cover.csv", "rounds.csv", "kits.csv", "checks.csv"],
	},
	{ question: "What do we mix and boil?", sheets: ["mixing.csv", "chlorine.csv"] },
	{
		question: "What do we fetch?",
		sheets: ["supply-use.csv", "lots.csv", "usage.csv", "items.csv"],
	},
	{ question: "How we work here", sheets: ["unit.csv", "steps.csv", "kinds.csv"] },
];
