import { say } from "../../../core/say.ts";
import type { PrintOut } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { labelSheets } from "../labels/labelSheets.ts";
import { wantedLabels } from "../labels/wantedLabels.ts";
import { orderForm } from "../order/orderForm.ts";
import { runSheetPrintOuts } from "../rounds/runSheetPrintOuts.ts";
import { boilingSheetOut } from "../water/boilingSheetOut.ts";
import { planPapers } from "./planPapers.ts";

const everyDay = runSheetPrintOuts.at(-1);

/**
 * The papers that a week is worked by, in the order in which they are handed out. All are
 * upright: browsers lay out one job for one way of the paper. The log for the bench lies
 * across and is a job of its own.
 */
export const papersOfWeek: readonly PrintOut[] = [
	{ name: say`The plan`, pages: planPapers },
	{ name: say`Work sheets of every day`, pages: (state) => everyDay?.pages(state) ?? [] },
	{ name: say`Labels`, pages: labels },
	{ name: say`Boiling sheet`, pages: boilingSheetOut.pages },
	{ name: say`Order form`, pages: orderForm.pages },
];

/** One of each, to begin the week with; the page of the labels makes more. */
function labels(state: State): HTMLElement[] {
	const each = { solutions: 1, mix: 0, made: undefined, rinseSets: 1, perKit: 1, done: undefined };
	return labelSheets(state, wantedLabels(state, each));
}
