import { strFromU8, unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { browser, served as site } from "./fixture.ts";
import { answer, answerFilePickers, fileOf } from "./pagesDisk.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** A plan is worked out at every edit, and a test machine may be slow. */
export const patient = { timeout: 10_000 };
export const PROPOSED = "basinbook Willow Ford delivery unit (invented) 2027-03-01.zip";

export const open = () => WorkbookPage.open(browser, site, {}, "births.csv", answerFilePickers);
export const save = (page: Page) => page.locator("#save-workbook").click();
export const kept = (page: Page) => page.locator("#kept").textContent();
export const title = (page: Page) => page.locator("#kept").getAttribute("title");
export async function saysSaved(page: Page, name: string): Promise<void> {
	const where = async () => (await kept(page))?.startsWith("Saved in ") && title(page);
	await expect.poll(where, patient).toBe(name);
}
export const dialog = (page: Page) =>
	page.getByRole("dialog", { name: "The workbook is not saved" });
export const choose = (page: Page, words: string) =>
	dialog(page).getByRole("button", { name: words }).click();
export const births = async (page: Page, name: string) =>
	strFromU8(unzipSync(await fileOf(page, name))["births.csv"] ?? new Uint8Array());

export async function saved(workbook: WorkbookPage, name: string): Promise<void> {
	await answer(workbook.page, name);
	await save(workbook.page);
	await saysSaved(workbook.page, name);
}
