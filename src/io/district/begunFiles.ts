import { headerOf } from "../../core/sheet.ts";
import { districtSheets } from "../../core/sheets/districtSheets.ts";
import { dataPackage } from "../dataPackage.ts";
import { csvLines } from "../writeCsv.ts";

const DESCRIPTION = "datapackage.json";

/** The first text of every file of a district, or of some of its sheets: its header, or all of it. */
export function begunFiles(sheets = districtSheets): Record<string, string> {
	const headers = sheets.map((sheet) => [sheet.file, csvLines([headerOf(sheet)])]);
	const described = sheets.map((sheet) => ({
		path: sheet.file,
		sheet,
		header: headerOf(sheet),
	}));
	return { ...Object.fromEntries(headers), [DESCRIPTION]: dataPackage(described) };
}
