import { settings } from "../../../core/sheets/settings.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";

/** What a row is called on the page: a setting by its label, all others by what they say. */
export function rowWords(file: string, row: string): string {
	return file === unitSheet.file && Object.hasOwn(settings, row)
		? settings[row as keyof typeof settings].label
		: row;
}
