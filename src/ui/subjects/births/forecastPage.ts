import { forecastSheet } from "../../../core/sheets/forecast.ts";
import type { SheetPage } from "../../page.ts";
import { forecastView } from "./forecastView.ts";
import { registerStartPart } from "./registerStartPart.ts";
import { daysHeadline } from "./registerWords.ts";

/** What is coming, day by day, and how sure that is. */
export const forecastPage: SheetPage = {
	sheet: forecastSheet,
	headline: daysHeadline,
	over: forecastView,
	part: registerStartPart,
};
