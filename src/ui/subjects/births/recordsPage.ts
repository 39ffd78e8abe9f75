import { recordsSheet } from "../../../core/sheets/records.ts";
import type { SheetPage } from "../../page.ts";
import { kitShareInBrief } from "./kitShareView.ts";
import { recordsCells } from "./recordsCells.ts";
import { recordsHeadline } from "./registerWords.ts";

/** The register of what happened. */
export const recordsPage: SheetPage = {
	sheet: recordsSheet,
	cells: recordsCells,
	headline: recordsHeadline,
	over: kitShareInBrief,
};
