import { say } from "../../core/say.ts";
import { dayPlanSheet } from "../../core/sheets/dayPlan.ts";
import { kitRegisterSheet } from "../../core/sheets/kitRegister.ts";
import { kitsSheet } from "../../core/sheets/kits.ts";
import { lotsSheet } from "../../core/sheets/lots.ts";
import { stockSheet } from "../../core/sheets/stock.ts";
import { wardSolutionSheet } from "../../core/sheets/wardSolution.ts";
import { wardUseSheet } from "../../core/sheets/wardUse.ts";
import { weekPlanSheet } from "../../core/sheets/weekPlan.ts";
import { weekTotalSheet } from "../../core/sheets/weekTotal.ts";
import { planTitle } from "../subjects/week/planTitle.ts";

/** One way of looking at the same things: a page, and what the switch calls it. */
interface PageView {
	readonly file: string;
	readonly words: string;
}

/**
 * Pages whose rows are the same things, looked at in several ways: for a reader they are one
 * page with a switch. The list of pages has the first of each; each keeps its own address,
 * and its own file.
 */
const groups: readonly (readonly PageView[])[] = [
	[
		{ file: planTitle.file, words: say`Days side by side` },
		{ file: dayPlanSheet.file, words: say`A line a day` },
		{ file: weekPlanSheet.file, words: say`A line a week` },
		{ file: weekTotalSheet.file, words: say`All days together` },
	],
	[
		{ file: kitRegisterSheet.file, words: say`How they stand` },
		{ file: kitsSheet.file, words: say`As entered` },
	],
	[
		{ file: stockSheet.file, words: say`How they stand` },
		{ file: lotsSheet.file, words: say`As entered` },
	],
	[
		{ file: wardUseSheet.file, words: say`What it takes` },
		{ file: wardSolutionSheet.file, words: say`As entered` },
	],
];

/** The views that a page is one of; none where it stands alone. */
export function viewsWith(file: string): readonly PageView[] {
	return groups.find((views) => views.some((view) => view.file === file)) ?? [];
}

/** The page by which the list of pages knows this one. */
export function listedAs(file: string): string {
	return viewsWith(file)[0]?.file ?? file;
}
