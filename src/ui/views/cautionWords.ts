import { THIS_WEEK } from "../book/pageTitles.ts";

/** What can hurt someone where chlorine is mixed. */
const mixing: readonly string[] = [
	"Never let chlorine meet vinegar or any acid, or ammonia or urine: poisonous gas.",
	"Product into water, never water onto product.",
	"Open the windows or work outside; gloves, eye protection and apron on.",
	"Label it at once: date, time mixed, discard time. Keep it from children, heat and light.",
];

/** What can hurt someone where water is boiled. */
const boiling: readonly string[] = [
	"Boiling water scalds: carry it covered, keep children away, let it cool before hands go in.",
	"Fuel indoors needs an open window or a chimney.",
];

/** What can hurt someone in a day's work; short, for the plan and its printed page. */
const week: readonly string[] = [
	"Chlorine and vinegar never in the same basin, and never one after the other without a rinse.",
	"Product into water; windows open; gloves, eye protection, apron.",
	"Boiling water scalds: carry it covered, keep children away, let it cool before hands go in.",
	"Label every mixed solution with date, time and discard time.",
];

const bySheet: Readonly<Record<string, readonly string[]>> = {
	[THIS_WEEK]: week,
	"tonight.csv": week,
	"run-sheet.csv": week,
	"mixing.csv": mixing,
	"mixing-days.csv": mixing,
	"wall-table.csv": mixing,
	"ward-use.csv": mixing,
	"boiling.csv": boiling,
};

/** The cautions that stand on a sheet, where the act is; none on sheets that say nothing to do. */
export function cautionsOf(file: string): readonly string[] {
	return bySheet[file] ?? [];
}

/** Whose word comes before this workbook's. */
export const standing =
	"A planning aid, not a validated process. Your national protocol, the maker's instructions and licensed practice come first.";
