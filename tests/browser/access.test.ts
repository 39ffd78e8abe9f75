import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { startBrowser } from "./chromium.ts";
import { type Site, servedSite } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const SHEETS = ["this-week", "kit-cover.csv", "mixing.csv", "order.csv", "unit.csv", "lots.csv"];

describe("whoever reads it, and however", { timeout: 120_000 }, () => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startBrowser(), servedSite()]);
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	const open = (options: Parameters<Browser["newContext"]>[0] = {}) =>
		WorkbookPage.open(browser, site, { bypassCSP: true, ...options });

	test("in forced colours every sheet is clean for axe, and a problem has words and a mark", async () => {
		const workbook = await open({ forcedColors: "active" });
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			expect(await axeViolations(workbook), sheet).toEqual([]);
		}
		await workbook.goTo("births.csv");
		await workbook.type(0, 1, "many");
		await workbook.page.locator(".under .problem-words").first().waitFor();
		expect(await workbook.page.locator(".under .problem-mark").first().textContent()).toBe("!");
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.close();
	});

	test("in forced colours what has the focus has an outline or a border of its own", async () => {
		const workbook = await open({ forcedColors: "active" });
		await workbook.page.locator("#undo").focus();
		for (let step = 0; step < 25; step++) {
			await workbook.page.keyboard.press("Tab");
			const seen = await workbook.page.evaluate(() => {
				const { outlineStyle, borderStyle, textDecorationLine } = getComputedStyle(
					document.activeElement as Element,
				);
				return outlineStyle !== "none" || borderStyle !== "none" || textDecorationLine !== "none";
			});
			expect(seen, `after ${step + 1} steps`).toBe(true);
		}
		await workbook.close();
	});

	test("nothing moves for who asks for less movement", async () => {
		const workbook = await open({ reducedMotion: "reduce" });
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			const moving = await workbook.page.evaluate(() =>
				[...document.querySelectorAll("*")]
					.filter((element) => {
						const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
						const slow = transitionDuration.split(",").some((time) => Number.parseFloat(time) > 0);
						return slow || animationName !== "none" || scrollBehavior === "smooth";
					})
					.map((element) => element.outerHTML.slice(0, 80)),
			);
			expect(moving, sheet).toEqual([]);
		}
		await workbook.close();
	});

	test.each([
		["200 %", 683, 384],
		["400 %", 342, 192],
	])("at %s no page scrolls sideways and the buttons stay on it", async (_, width, height) => {
		const workbook = await open({ viewport: { width, height } });
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			const outside = await workbook.page.evaluate(() => {
				const wide = document.documentElement.clientWidth;
				const buttons = [...document.querySelectorAll<HTMLElement>(".top button, .tools button")];
				return [
					...(document.documentElement.scrollWidth > wide ? ["the page itself"] : []),
					...buttons
						.filter((button) => button.checkVisibility())
						.filter((button) => button.getBoundingClientRect().right > wide + 1)
						.map((button) => button.textContent ?? ""),
				];
			});
			expect(outside, sheet).toEqual([]);
		}
		await workbook.close();
	});

	test("text set wider apart is not cut off and does not push the page sideways", async () => {
		const workbook = await open();
		await workbook.page.addStyleTag({
			content:
				"main :not(.grid *), .rail * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } main p { margin-bottom: 2em !important; }",
		});
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			const wide = await workbook.page.evaluate(() => document.documentElement.scrollWidth);
			expect(wide, sheet).toBeLessThanOrEqual(1366);
		}
		await workbook.close();
	});

	test("with a dialog open, a cell asked why, a bad cell or nothing in it the page is clean for axe", async () => {
		const workbook = await open();
		const { page } = workbook;
		for (const button of ["#find", "#show-keys"]) {
			await page.locator(button).click();
			await page.locator("dialog[open]").waitFor();
			expect(await axeViolations(workbook), button).toEqual([]);
			await page.keyboard.press("Escape");
		}
		await workbook.goTo("kit-cover.csv");
		await workbook.click(0, 1);
		await page.locator(".pane h2").first().waitFor();
		expect(await axeViolations(workbook), "why").toEqual([]);
		await workbook.goTo("lots.csv");
		await workbook.type(0, 2, "a lot");
		await page.locator(".under .problem-words").first().waitFor();
		expect(await axeViolations(workbook), "a bad cell").toEqual([]);
		await page.locator(".start summary").click();
		expect(await axeViolations(workbook), "the menu").toEqual([]);
		await page.getByRole("button", { name: "Start empty" }).click();
		await page.getByRole("heading", { level: 1 }).waitFor();
		expect(await axeViolations(workbook), "empty").toEqual([]);
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			expect(await axeViolations(workbook), `empty: ${sheet}`).toEqual([]);
		}
		await workbook.close();
	});

	test("beside every grid stands a table with the same cells, for who hears it", async () => {
		const workbook = await open();
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			if ((await workbook.page.locator(".grid td").count()) === 0) continue;
			const table = await workbook.table();
			expect(table.length, sheet).toBeGreaterThan(1);
			await workbook.click(0, 0);
			const spoken = await workbook.page.locator(".grid").getAttribute("aria-label");
			expect(spoken, sheet).toContain(table[1]?.[0] || table[0]?.[0]);
		}
		await workbook.close();
	});
});
