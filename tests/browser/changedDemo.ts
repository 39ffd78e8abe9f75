import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { expect } from "vitest";
import { dropDemo } from "./droppedDemo.ts";
import type { Site } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const sample = join(import.meta.dirname, "../../sample-csv");

/** What becomes of a file's text, by file. */
export type Changed = Readonly<Record<string, (text: string) => string>>;

/** Opens the demo with some files changed: each given the text as it is, it gives the text it shall be. */
export async function openChanged(
	browser: Browser,
	site: Site,
	sheet: string,
	changes: Changed = {},
): Promise<WorkbookPage> {
	const workbook = await WorkbookPage.open(browser, site, {}, sheet);
	// A sheet that the demo does not have starts from nothing.
	const textOf = (name: string) =>
		existsSync(join(sample, name)) ? readFileSync(join(sample, name), "utf8") : "";
	const sheets = Object.entries(changes).map(([name, change]) => [name, change(textOf(name))]);
	if (sheets.length > 0) await dropDemo(workbook, { sheets: Object.fromEntries(sheets) });
	return workbook;
}

/** Nothing went wrong on the way, and nothing left the page. */
export async function closeClean(workbook: WorkbookPage): Promise<void> {
	expect(workbook.errors).toEqual([]);
	expect(workbook.requestsElsewhere).toEqual([]);
	await workbook.close();
}
