import { tonightSheet } from "../../../core/sheets/tonight.ts";
import type { SheetPage } from "../../page.ts";
import { dayCautions } from "../week/dayCautions.ts";
import { tonightOnPhone } from "./tonightList.ts";

/** What to start the evening before. */
export const tonightPage: SheetPage = {
	sheet: tonightSheet,
	over: tonightOnPhone,
	cautions: dayCautions,
};
