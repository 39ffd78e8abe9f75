import type { Sheet } from "../sheet.ts";
import { computedSheets } from "./computedSheets.ts";
import { typedSheets } from "./typedSheets.ts";

const sheets = new Map([...typedSheets, ...computedSheets].map((sheet) => [sheet.file, sheet]));

/** The definition of a file of the workbook; undefined for a file the format does not know. */
export function sheetOf(file: string): Sheet | undefined {
	return sheets.get(file);
}

export function isTyped(file: string): boolean {
	return typedSheets.some((sheet) => sheet.file === file);
}
