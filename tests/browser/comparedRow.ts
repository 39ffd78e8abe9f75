import type { WorkbookPage } from "./workbookPage.ts";

/** Texts of the row of a table that begins with these words. */
export async function comparedRow(workbook: WorkbookPage, words: string): Promise<string[]> {
	const row = workbook.page.locator(".compared tr", { hasText: words }).first();
	return row.locator("td").allTextContents();
}
