import { recordsSheet } from "../../../core/sheets/records.ts";
import type { SheetPage } from "../../page.ts";
import { kitShareInBrief } from "./kitShareView.ts";
import { recordsHeadline } from "./registerWords.ts";

/** The register of what happened. */
export const recordsPage: SheetPage = {
	sheet: recordsSheet,
	headline: recordsHeadline,
	over: kitShareInBrief,
};
