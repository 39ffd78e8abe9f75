import type { Page } from "playwright-core";
import { expect } from "vitest";

/** A plan is worked out at every edit, and a test machine may be slow. */
export const patient = { timeout: 10_000 };
export const cellOf = (page: Page, row: number, column: number) =>
	page
		.locator(`.as-table tbody tr:nth-child(${row + 1}) td`)
		.nth(column)
		.textContent();

export async function expectSaving(page: Page): Promise<void> {
	const download = page.waitForEvent("download");
	await page.getByRole("button", { name: "Save workbook" }).click();
	expect((await download).suggestedFilename()).toMatch(/\.zip$/);
}

export async function type(page: Page, row: number, text: string): Promise<void> {
	await page
		.locator(`.grid .ht_master tbody tr:nth-child(${row + 1}) td`)
		.nth(2)
		.click();
	await page.keyboard.type(text);
	await page.keyboard.press("Enter");
	await expect.poll(() => cellOf(page, row, 2), patient).toBe(text);
}
