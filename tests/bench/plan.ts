import { withTexts } from "../../src/core/edit/withTexts.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { type Births, longUnit, withItems } from "./longUnit.ts";
import { type Measured, measure, report } from "./measure.ts";
import { planOfWeek, planWithItsDays, wholePlan } from "./wholePlan.ts";
import { yearWorkbook } from "./yearWorkbook.ts";

/**
 * From one edit to the new plan with all of its problems: plans of 7, 31 and 366 days, units
 * of 1, 10 and 50 items, and days that are more or less alike. Of a year also what a page
 * waits for, and what a file of it takes.
 */
const DAYS = [7, 31, 366];
const ITEMS = [1, 10, 50];
const LONGEST = 366;
const SCREEN_MS = 16;
const REGISTER = `${LONGEST} days, the demo with a year's register`;
const rows: Measured[] = [];

/** One cell, to which each run gives another value. */
const EDITS = {
	"births of a day": ["births.csv", 2, "births", (run: number) => 1 + run / 7],
	"a setting": ["unit.csv", "plan_confidence", "value", (run: number) => 0.9 + run / 1000],
	"a lot": ["lots.csv", 0, "quantity", (run: number) => 10 + run],
} as const;

const edited = (workbook: Workbook, name: string, edit: keyof typeof EDITS, planOf = wholePlan) =>
	measure(`${name}: ${edit}`, editing(workbook, edit, planOf));

for (const days of DAYS)
	for (const edit of Object.keys(EDITS) as (keyof typeof EDITS)[])
		rows.push(edited(longUnit(days), `${days} days`, edit));
const year = rows.slice(-Object.keys(EDITS).length);
const kinds: Births[] = ["all different", "not typed"];
for (const births of kinds)
	rows.push(edited(longUnit(LONGEST, births), `${LONGEST} days, births ${births}`, "a setting"));
for (const edit of ["a setting", "a lot"] as const)
	rows.push(edited(yearWorkbook(), REGISTER, edit));
const forecast = rows.slice(-2);
const parts = { "a week and the sums": planOfWeek, "every day's cells as well": planWithItsDays };
for (const [part, planOf] of Object.entries(parts)) {
	for (const edit of Object.keys(EDITS) as (keyof typeof EDITS)[])
		rows.push(edited(longUnit(LONGEST), `${LONGEST} days, ${part}`, edit, planOf));
	for (const edit of ["a setting", "a lot"] as const)
		rows.push(edited(yearWorkbook(), `${REGISTER}, ${part}`, edit, planOf));
}
const ofWeek = rows.filter(({ what }) => what.includes("a week and the sums"));
for (const items of ITEMS)
	for (const edit of Object.keys(EDITS) as (keyof typeof EDITS)[])
		rows.push(
			edited(
				longUnit(DAYS[0] as number, "by weekday", withItems(items)),
				`${DAYS[0]} days, ${items} items`,
				edit,
			),
		);

const msOf = (what: string) => rows.find((row) => row.what === what)?.ms ?? Number.NaN;
const growth = msOf(`${LONGEST} days: a setting`) / msOf("31 days: a setting") / (LONGEST / 31);
report("plan", rows, [
	...[...year, ...forecast, ...ofWeek].map(({ what, ms }) => ({
		what: `One edit, ${what}`,
		found: ms,
		unit: "ms",
		bound: "at most" as const,
		limit: SCREEN_MS,
	})),
	{
		what: `Cost of a day in a plan of ${LONGEST} days ÷ in one of 31`,
		found: growth,
		unit: "times",
		bound: "at most",
		limit: 1.5,
	},
]);

/** Each run changes the cell to another figure and plans anew. */
function editing(
	workbook: Workbook,
	edit: keyof typeof EDITS,
	planOf: typeof wholePlan,
): () => unknown {
	const [file, at, column, textOf] = EDITS[edit];
	const table = workbook.tables[file];
	const row = typeof at === "number" ? at : (table?.rows.findIndex(([key]) => key === at) ?? -1);
	let run = 0;
	return () => {
		run = (run + 1) % 97;
		return planOf(withTexts(workbook, file, [{ row, column, text: String(textOf(run)) }]));
	};
}
