import { birthsSheet } from "../../../core/sheets/births.ts";
import type { SheetPage } from "../../page.ts";
import { birthsHeadline } from "./registerWords.ts";

/** Births expected on single days, typed by the unit. */
export const birthsPage: SheetPage = {
	sheet: birthsSheet,
	headline: birthsHeadline,
};
