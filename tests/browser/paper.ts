import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";

/** What came out of the printer: the text of each page, and the size of the paper in points. */
export interface Printed {
	readonly pages: readonly string[];
	/** All pages' text. */
	readonly text: string;
	readonly width: number;
	readonly height: number;
}

/**
 * Presses a button that prints, and reads what would be on paper.
 *
 * The browser's own print dialog is held back, so that the page stays as it is for the printer.
 */
export async function printed(
	page: Page,
	button: string,
	format: "A4" | "Letter" = "A4",
): Promise<Printed> {
	await page.evaluate(() => {
		window.print = () => {};
	});
	await page.getByRole("button", { name: button, exact: true }).click();
	const pdf = await page.pdf({ preferCSSPageSize: true, format });
	await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
	return readPdf(pdf);
}

if (spawnSync("pdftotext", ["-v"]).error)
	throw new Error("pdftotext was not found. Install it (Debian: apt-get install poppler-utils).");

/** What stands in a file that the printer would get. */
export function readPdf(pdf: Buffer): Printed {
	const folder = mkdtempSync(join(tmpdir(), "basinbook paper "));
	try {
		const file = join(folder, "printed.pdf");
		writeFileSync(file, pdf);
		const text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
		const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(
			pdf.toString("latin1"),
		) as RegExpExecArray;
		return {
			text,
			pages: text.split("\f").slice(0, -1),
			width: Math.round(Number(width)),
			height: Math.round(Number(height)),
		};
	} finally {
		rmSync(folder, { recursive: true });
	}
}
