import { headerOf } from "../../core/sheet.ts";
import { districtSheets } from "../../core/sheets/districtSheets.ts";
import { dataPackage } from "../dataPackage.ts";
import { DESCRIPTION_FILE } from "../descriptionFile.ts";
import { csvLines } from "../writeCsv.ts";

/** The first text of every file of a district, or of some of its sheets: its header, or all of it. */
export function begunFiles(sheets = districtSheets): Record<string, string> {
	const headers = sheets.map((sheet) => [sheet.file, csvLines([headerOf(sheet)])]);
	const described = sheets.map((sheet) => ({
		path: sheet.file,
		sheet,
		header: headerOf(sheet),
	}));
	return { ...Object.fromEntries(headers), [DESCRIPTION_FILE]: dataPackage(described) };
}
