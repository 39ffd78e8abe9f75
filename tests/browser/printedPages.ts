import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { WorkbookPage } from "./workbookPage.ts";

/** What comes out of the printer: its number of pages, and its words page by page. */
export interface Printed {
	readonly pages: number;
	readonly text: string;
}

/**
 * Presses a print button and reads the paper as pdftotext does.
 *
 * The browser's own print window is kept shut; the pages stay in the document
 * until they have been taken.
 */
export async function printedPages(
	{ page }: WorkbookPage,
	button: string,
	format: "A4" | "Letter" = "A4",
): Promise<Printed> {
	await page.evaluate(() => {
		window.print = () => {};
	});
	await page.getByRole("button", { name: button, exact: true }).click();
	const folder = mkdtempSync(join(tmpdir(), "printed "));
	const path = join(folder, "pages.pdf");
	await page.pdf({ path, format, preferCSSPageSize: true });
	const text = execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" });
	rmSync(folder, { recursive: true });
	return { pages: text.split("\f").length - 1, text };
}
