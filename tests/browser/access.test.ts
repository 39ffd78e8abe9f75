import type { Browser } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { browser, served as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** 200 % and 400 % of a laptop's screen. */
const ENLARGED = [
	{ width: 683, height: 384 },
	{ width: 342, height: 192 },
];
const WIDER_APART =
	"main :not(.grid *), .rail * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } main p { margin-bottom: 2em !important; }";
const SHEETS = ["this-week", "kit-cover.csv", "mixing.csv", "order.csv", "unit.csv", "lots.csv"];

describe("whoever reads it, and however", { timeout: 120_000 }, () => {
	const open = (options: Parameters<Browser["newContext"]>[0] = {}) =>
		WorkbookPage.open(browser, site, { bypassCSP: true, ...options });

	test("some of every kind of sheet: forced colours, no movement, enlarged, and text set wider apart", async () => {
		const workbook = await open();
		const { page } = workbook;
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			await page.emulateMedia({ forcedColors: "active" });
			expect(await axeViolations(workbook), sheet).toEqual([]);
			await page.emulateMedia({ forcedColors: "none", reducedMotion: "reduce" });
			expect(await moving(workbook), sheet).toEqual([]);
			await page.emulateMedia({ reducedMotion: "no-preference" });
		}
		for (const size of ENLARGED) {
			await page.setViewportSize(size);
			for (const sheet of SHEETS) {
				await workbook.goTo(sheet);
				expect(await outside(workbook), `${sheet} on ${size.width} px`).toEqual([]);
			}
		}
		await page.setViewportSize({ width: 1366, height: 768 });
		await page.addStyleTag({ content: WIDER_APART });
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			const wide = await page.evaluate(() => document.documentElement.scrollWidth);
			expect(wide, sheet).toBeLessThanOrEqual(1366);
		}
		await workbook.close();
	});

	test("in forced colours what has the focus has an outline or a border of its own, and a problem words and a mark", async () => {
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
		await workbook.goTo("births.csv");
		await workbook.type(0, 1, "many");
		await workbook.page.locator(".under .problem-words").first().waitFor();
		await expect
			.poll(() => workbook.page.locator(".under .problem-mark").first().textContent())
			.toBe("!");
		expect(await axeViolations(workbook)).toEqual([]);
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
});

/** What moves though less movement was asked for. */
function moving({ page }: WorkbookPage): Promise<string[]> {
	return page.evaluate(() =>
		[...document.querySelectorAll("*")]
			.filter((element) => {
				const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
				const slow = transitionDuration.split(",").some((time) => Number.parseFloat(time) > 0);
				return slow || animationName !== "none" || scrollBehavior === "smooth";
			})
			.map((element) => element.outerHTML.slice(0, 80)),
	);
}

/** What makes the page scroll sideways, and the buttons that are not on it. */
function outside({ page }: WorkbookPage): Promise<string[]> {
	return page.evaluate(() => {
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
}
