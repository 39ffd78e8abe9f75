import { sheetOf } from "../../core/sheets/sheetOf.ts";

/** What a person calls the sheet; its file where the format does not know it. */
export function titleOf(file: string): string {
	return sheetOf(file)?.title ?? file;
}
