import { later } from "../dom/later.ts";

/** What reads spreadsheets' own files: few people open one, and those wait for it. */
export const spreadsheets = later(async () => {
	const { readSpreadsheet } = await import("../../io/spreadsheets/readSpreadsheet.ts");
	return readSpreadsheet;
});
