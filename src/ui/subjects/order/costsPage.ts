import { costsSheet } from "../../../core/sheets/costs.ts";
import type { SheetPage } from "../../page.ts";
import { costsHeadline, costsView } from "./costsView.ts";

/** What each product costs. */
export const costsPage: SheetPage = {
	sheet: costsSheet,
	headline: costsHeadline,
	over: costsView,
};
