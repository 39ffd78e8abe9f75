import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { browser, served as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

const PHONE = { viewport: { width: 360, height: 740 } };
const A4_LANDSCAPE_POINTS = { width: 842, height: 595 };

describe("reading", { timeout: 90_000 }, () => {
	test.each(["guide.html", "sources.html"])("%s is clean for axe", async (page) => {
		const workbook = await WorkbookPage.open(browser, site, { bypassCSP: true });
		await workbook.page.goto(site.address + page);
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.close();
	});

	test("the plan prints on one A4 page", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const pdf = (await workbook.page.pdf({ format: "A4", preferCSSPageSize: true })).toString(
			"latin1",
		);
		expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
		const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
		expect(Math.floor(Number(width))).toBe(A4_LANDSCAPE_POINTS.width);
		expect(Math.floor(Number(height))).toBe(A4_LANDSCAPE_POINTS.height);
		await workbook.close();
	});

	test("a number and its unit stand on one line, with a plain space between them", async () => {
		const workbook = await WorkbookPage.open(browser, site, PHONE, "product-compare.csv");
		const amount = workbook.page.locator("h1 .unparted");
		expect(await amount.textContent()).toBe("70 %");
		expect(await amount.evaluate((element) => element.getClientRects().length)).toBe(1);
		expect(await workbook.page.locator("h1").textContent()).toContain("Chlorine powder 70 % costs");
		await workbook.close();
	});

	test("a why leads from a number to its inputs, and on to where they were typed", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.click(1, 1);
		const { page } = workbook;
		await page.locator(".pane .link", { hasText: "computed: why?" }).first().click();
		await page.getByRole("button", { name: "← Back" }).waitFor();
		await page.getByRole("button", { name: "← Back" }).click();
		await page.locator(".pane .link", { hasText: "Settings of the unit" }).first().click();
		await page.locator(`a[data-sheet="unit.csv"][aria-current=page]`).waitFor();
		await page.goBack();
		await page.locator(`a[data-sheet="this-week"][aria-current=page]`).waitFor();
		await workbook.close();
	});
});
