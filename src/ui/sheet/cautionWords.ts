import { say } from "../../core/say.ts";
import { THIS_WEEK } from "../shell/pageTitles.ts";
import { storing } from "../subjects/store/storeCautions.ts";

/** What can hurt someone where chlorine is mixed. */
const mixing: readonly string[] = [
	say`Never let chlorine meet vinegar or any acid, or ammonia or urine: poisonous gas.`,
	say`Product into water, never water onto product.`,
	say`Open the windows or work outside; gloves, eye protection and apron on.`,
	say`Label it at once: date, time mixed, discard time. Keep it from children, heat and light.`,
];

/** What can hurt someone where water is boiled. */
const boiling: readonly string[] = [
	say`Boiling water scalds: carry it covered, keep children away, let it cool before hands go in.`,
	say`Fuel indoors needs an open window or a chimney.`,
];

/** What can hurt someone in a day's work; short, for the plan and its printed page. */
const week: readonly string[] = [
	say`Chlorine and vinegar never in the same basin, and never one after the other without a rinse.`,
	say`Product into water; windows open; gloves, eye protection, apron.`,
	say`Boiling water scalds: carry it covered, keep children away, let it cool before hands go in.`,
	say`Label every mixed solution with date, time and discard time.`,
];

/** What can harm a baby where it is decided which kit is ready. */
const readiness: readonly string[] = [
	say`When in doubt do not use. Test every kit again before each birth.`,
	say`A kit with a piece missing, a failed test or a doubtful date is set apart and marked at once.`,
	say`Single-use parts are thrown away as the maker says.`,
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
	"order.csv": storing,
	"stock.csv": storing,
	"lots.csv": storing,
	"journal.csv": storing,
	labels: mixing,
	"kit-register.csv": readiness,
	"kit-history": readiness,
	"checks.csv": readiness,
};

/** The cautions that stand on a sheet, where the act is; none on sheets that say nothing to do. */
export function cautionsOf(file: string): readonly string[] {
	return bySheet[file] ?? [];
}

/** Whose word comes before this workbook's. */
export const standing = say`A planning aid, not a validated process. Your national protocol, the maker's instructions and licensed practice come first.`;
