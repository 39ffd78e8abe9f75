import { sheetOf } from "../../core/sheets/sheetOf.ts";
import { pageTitles } from "./pageTitles.ts";

/** What a person calls the sheet. */
export function titleOf(file: string): string {
	return pageTitles[file] ?? sheetOf(file)?.title ?? file;
}
