import { scorecardSheet } from "../../../core/sheets/scorecard.ts";
import type { SheetPage } from "../../page.ts";
import { scorecardView } from "./scorecardView.ts";
import { scorecardHeadline } from "./scorecardWords.ts";

/** How good the forecasts were. */
export const scorecardPage: SheetPage = {
	sheet: scorecardSheet,
	headline: scorecardHeadline,
	over: scorecardView,
};
