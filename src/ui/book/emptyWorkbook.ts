import { headerOf } from "../../core/sheet.ts";
import { settings } from "../../core/sheets/settings.ts";
import { typedSheets } from "../../core/sheets/typedSheets.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { TextTable, Workbook } from "../../core/workbook.ts";

/** Every sheet with its header and no rows; the settings stand ready with blank values. */
export function emptyWorkbook(): Workbook {
	const tables: [string, TextTable][] = typedSheets.map((sheet) => [
		sheet.file,
		{ header: headerOf(sheet), rows: [] },
	]);
	const blankSettings = Object.keys(settings).map((key) => [key, ""]);
	return {
		tables: {
			...Object.fromEntries(tables),
			[unitSheet.file]: { header: headerOf(unitSheet), rows: blankSettings },
		},
	};
}
