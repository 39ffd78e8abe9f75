import type { Sheet } from "../../core/sheet.ts";
import { computedSheets } from "../../core/sheets/computedSheets.ts";
import { typedSheets } from "../../core/sheets/typedSheets.ts";
import { pageTitles } from "./pageTitles.ts";

const sheets = new Map([...typedSheets, ...computedSheets].map((sheet) => [sheet.file, sheet]));

/** The definition of a file of the workbook; undefined for a file the format does not know. */
export function sheetOf(file: string): Sheet | undefined {
	return sheets.get(file);
}

/** What a person calls the sheet. */
export function titleOf(file: string): string {
	return pageTitles[file] ?? sheets.get(file)?.title ?? file;
}

export function isTyped(file: string): boolean {
	return typedSheets.some((sheet) => sheet.file === file);
}
