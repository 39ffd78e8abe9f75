import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** The units of a district and their order as one. */
export const severalUnitsTitle: PageTitle = {
	file: "several-units",
	title: say`Several units`,
	about: say`The workbooks of a district's units: which unit needs help first, and one order for all. Give the workbooks as the units save them (zips, spreadsheets, folders of sheets), or only the sheets “What to order”. Packs are counted from the need of all units together, less what the district's own store has; a unit with more than enough does not lend to the others. Nothing leaves this computer, and the workbook that is open stays as it is.`,
};
