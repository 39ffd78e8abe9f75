import { birthsSheet } from "../../../core/sheets/births.ts";
import { forecastSheet } from "../../../core/sheets/forecast.ts";
import { recordsSheet } from "../../../core/sheets/records.ts";
import { scorecardSheet } from "../../../core/sheets/scorecard.ts";
import type { State } from "../../state/store.ts";
import { birthsHeadline, daysHeadline, recordsHeadline } from "./registerWords.ts";
import { scorecardHeadline } from "./scorecardWords.ts";

/** Titles that say the answer, for the sheets of what is coming; undefined where there is no answer yet. */
export const comingHeadlines: Readonly<Record<string, (state: State) => string | undefined>> = {
	[forecastSheet.file]: daysHeadline,
	[birthsSheet.file]: birthsHeadline,
	[recordsSheet.file]: recordsHeadline,
	[scorecardSheet.file]: scorecardHeadline,
};
