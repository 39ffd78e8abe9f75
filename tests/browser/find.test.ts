import { describe, expect, test } from "vitest";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick, served } from "./fixture.ts";
import { focusIn, SOON, spoken } from "./sheetTools.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("finding, %s", { timeout: 60_000 }, (_, site) => {
	const open = (sheet: string, options = {}) => WorkbookPage.open(browser, site, options, sheet);

	test("words are found in any sheet, and the way there goes by keyboard alone", async () => {
		const workbook = await open("this-week");
		const { page } = workbook;
		await page.keyboard.press("Control+k");
		await page.keyboard.type("on the TROLLEY");
		const status = page.locator("dialog.find [role=status]");
		await expect.poll(() => status.textContent(), SOON).toBe("1 place found.");
		await page.keyboard.press("ArrowDown");
		expect(await focusIn(workbook, ".hits li")).toBe(true);
		await page.keyboard.press("Enter");
		await page
			.locator(`a[data-sheet="kits.csv"][aria-current=page]`)
			.waitFor({ state: "attached" });
		expect(await page.locator("dialog.find").isVisible()).toBe(false);
		await expect
			.poll(() => page.locator(".pane input, .pane select").inputValue())
			.toContain("on the trolley");
		expect(await focusIn(workbook, ".grid")).toBe(true);
		// The window opens again from within the grid, with the words of last time; Escape leaves it.
		await page.keyboard.press("Control+k");
		await expect.poll(() => status.textContent(), SOON).toBe("1 place found.");
		await page.keyboard.press("Escape");
		expect(await focusIn(workbook, ".grid")).toBe(true);
		await closeClean(workbook);
	});

	test("a computed cell, a setting and a problem are found and gone to; hits beyond a page are counted", async () => {
		const workbook = await open("this-week");
		const { page } = workbook;
		const hits = page.locator("dialog.find li button");
		const look = async (words: string) => {
			await page.getByRole("button", { name: "Find" }).click();
			await page.locator("#find-field").fill(words);
		};
		await look("e");
		await expect
			.poll(() => page.locator("dialog.find [role=status]").textContent(), SOON)
			.toMatch(/^\d{3,} places found; the first 50 are listed/);
		await expect.poll(() => hits.count()).toBe(50);
		await page.keyboard.press("Escape");
		await look("Mon 1 Mar");
		await hits.filter({ hasText: "The plan, day by day, Date: Mon 1 Mar" }).click();
		expect(await spoken(workbook)).toContain("Date; Mon 1 Mar");
		await look("delivery beds");
		await hits.filter({ hasText: "Settings of the unit" }).first().click();
		await expect
			.poll(() => page.locator(".pane .entry-label").textContent())
			.toMatch(/delivery beds/i);
		await workbook.goTo("kits.csv");
		await workbook.type(2, 3, "yesterday");
		await look("yesterday");
		await hits.filter({ hasText: "line 4, problem" }).click();
		await expect.poll(() => page.locator("#entry-field").inputValue()).toBe("yesterday");
		await closeClean(workbook);
	});
});
