import { waterSheet } from "../../../core/sheets/water.ts";
import type { SheetPage } from "../../page.ts";
import { waterHeadline, waterView } from "./waterView.ts";

/** Where the water comes from. */
export const waterPage: SheetPage = {
	sheet: waterSheet,
	headline: waterHeadline,
	over: waterView,
};
