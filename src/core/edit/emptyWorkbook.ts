import { headerOf } from "../sheet.ts";
import { settings } from "../sheets/settings.ts";
import { typedSheets } from "../sheets/typedSheets.ts";
import { unitSheet } from "../sheets/unit.ts";
import type { TextTable, Workbook } from "../workbook.ts";

/** True while nothing has been entered: keys of settings alone are nothing. */
export function isEmpty({ tables }: Workbook): boolean {
	return Object.entries(tables).every(([file, { header, rows }]) => {
		const named = file === unitSheet.file ? header.indexOf("key") : -1;
		return rows.every((row) => row.every((cell, at) => at === named || cell.trim() === ""));
	});
}

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
