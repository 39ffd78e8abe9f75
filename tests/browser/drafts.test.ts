import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "./chromium.ts";
import { type Site, siteOnStick } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe("drafts", { timeout: 60_000 }, () => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startBrowser(), siteOnStick()]);
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	test("two windows keep a draft each, and both are offered at the next opening", async () => {
		const first = await WorkbookPage.open(browser, site);
		await first.type(0, 1, "11");
		const second = await first.context.newPage();
		await second.goto(`${site.address}index.html`);
		await second.getByRole("button", { name: "Start from the demo" }).click();
		// Both windows go on: neither may write over what the other keeps.
		await first.type(0, 2, "12");
		await second.getByRole("button", { name: "Undo" }).click();
		const third = await first.context.newPage();
		await third.goto(`${site.address}index.html`);
		await third.locator("#opening").waitFor();
		await expect(third.locator(".drafts button").count()).resolves.toBe(1);
		await third.locator(".drafts button").click();
		const births = await third
			.locator(".as-table tbody tr:nth-child(1) td")
			.evaluateAll((cells) =>
				cells.slice(0, 2).map((cell) => (cell.querySelector(".figure") ?? cell).textContent),
			);
		expect(births).toEqual(["11", "12"]);
		await first.close();
	});

	test("storage that is full is said, and the workbook can still be saved", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.page.evaluate(() => {
			let size = 1_000_000;
			for (let n = 0; size > 0; n++)
				try {
					localStorage.setItem(`filler ${n}`, "x".repeat(size));
				} catch {
					size = Math.floor(size / 2);
				}
		});
		await workbook.type(0, 1, "11");
		await expect(workbook.page.locator("body").textContent()).resolves.toContain(
			"cannot keep a draft",
		);
		const download = workbook.page.waitForEvent("download");
		await workbook.page.getByRole("button", { name: "Save workbook" }).click();
		expect((await download).suggestedFilename()).toMatch(/\.zip$/);
		await workbook.close();
	});

	test("a draft that is damaged is passed over", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.type(0, 1, "11");
		await workbook.page.evaluate(() => {
			for (const key of Object.keys(localStorage)) localStorage.setItem(key, '{"workbook":7');
		});
		await workbook.page.reload();
		await workbook.page.locator("#sheet h1").waitFor();
		expect(await workbook.page.locator("#opening").isVisible()).toBe(false);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});
