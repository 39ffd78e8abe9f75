import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "./chromium.ts";
import { type Site, servedSite } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const A4_LANDSCAPE_POINTS = { width: 842, height: 595 };

describe("reading", { timeout: 90_000 }, () => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startBrowser(), servedSite()]);
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	/** What axe finds wrong on the page as it is. */
	async function violations(workbook: WorkbookPage): Promise<string[]> {
		return workbook.page.evaluate(async () => {
			const { axe } = window as unknown as { axe: typeof import("axe-core") };
			const found = await axe.run(document);
			return found.violations.map(
				({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(" | ")}`,
			);
		});
	}

	test.each(["light", "dark"] as const)("every sheet is clean for axe, %s", async (colorScheme) => {
		const workbook = await WorkbookPage.open(browser, site, { colorScheme, bypassCSP: true });
		await workbook.page.evaluate(axe);
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			if (await workbook.page.locator(".grid td").count()) await workbook.click(0, 1);
			expect(await violations(workbook), sheet).toEqual([]);
		}
		await workbook.close();
	});

	test.each(["guide.html", "sources.html"])("%s is clean for axe", async (page) => {
		const workbook = await WorkbookPage.open(browser, site, { bypassCSP: true });
		await workbook.page.goto(site.address + page);
		await workbook.page.evaluate(axe);
		expect(await violations(workbook)).toEqual([]);
		await workbook.close();
	});

	test("no sheet asks for anything from elsewhere or breaks the content security policy", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		for (const sheet of await workbook.sheets()) await workbook.goTo(sheet);
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});

	test.each([
		["laptop", 1366, 768],
		["phone", 360, 740],
		["laptop at 200 %", 683, 384],
	])("no page scrolls sideways on a %s", async (_, width, height) => {
		const workbook = await WorkbookPage.open(browser, site, { viewport: { width, height } });
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			const wide = await workbook.page.evaluate(() => document.documentElement.scrollWidth);
			expect(wide, sheet).toBeLessThanOrEqual(width);
		}
		await workbook.close();
	});

	test("the plan prints on one A4 page", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const pdf = (await workbook.page.pdf({ preferCSSPageSize: true })).toString("latin1");
		expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
		const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
		expect(Math.round(Number(width))).toBe(A4_LANDSCAPE_POINTS.width);
		expect(Math.round(Number(height))).toBe(A4_LANDSCAPE_POINTS.height);
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
