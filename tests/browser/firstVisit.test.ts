import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { browser, onStick, served } from "./fixture.ts";
import { readPdf } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

const output = join(import.meta.dirname, "../output");
const MOST_ENTRIES = 10;
const MOST_TABS = 60;

/** What a person types, in the order in which the page asks: each ends with Enter, which goes on. */
const typed: readonly (readonly [entry: string, keys: string])[] = [
	["First day of the plan", "03012027"],
	["Births a day", "4.5"],
	["Delivery beds", "2"],
	["Kits in service", "3"],
	["Times of the rounds", "7:00 15:00"],
	["Steps of a round", ""],
	["Pots for boiled water", "3"],
	["Chlorine product in use", "Liquid, label in % a"],
	["Strength on the label", "3.5"],
	["In the store", "5 x 1000"],
];

/** Goes on with Tab until the focus is on something of this name. */
async function tabTo(page: Page, name: string): Promise<number> {
	for (let tabs = 1; tabs <= MOST_TABS; tabs++) {
		await page.keyboard.press("Tab");
		const here = await page.evaluate(() => document.activeElement?.textContent?.trim());
		if (here === name) return tabs;
	}
	throw new Error(`${MOST_TABS} tabs do not lead to ${name}`);
}

function missing(page: Page): Promise<string | null> {
	return page.locator(".begin-missing").textContent();
}

async function startEmpty(page: Page): Promise<void> {
	await page.locator(".start summary").click();
	await page.getByRole("button", { name: "Start empty" }).click();
	await page.getByLabel("First day of the plan").waitFor();
}

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("the first visit, %s", { timeout: 60_000 }, (place, site) => {
	test("from nothing to a printed plan by keyboard, in ten entries at most", async () => {
		const steps: { step: string; milliseconds: number }[] = [];
		let began = performance.now();
		const done = (step: string) => {
			const now = performance.now();
			steps.push({ step, milliseconds: Math.round(now - began) });
			began = now;
		};
		const workbook = await WorkbookPage.open(browser, site, {}, "");
		const { page } = workbook;
		done("open the page");
		await page.getByRole("dialog", { name: "How do you want to begin?" }).waitFor();
		await tabTo(page, "Begin empty");
		await page.keyboard.press("Enter");
		await page.getByLabel("First day of the plan").waitFor();
		done("start empty");

		let entries = 0;
		for (const [entry, keys] of typed) {
			const line = page.locator(".begin-line", { hasText: entry }).first();
			await expect.poll(() => line.locator(":focus").count(), { message: entry }).toBe(1);
			expect(await missing(page)).toContain(entry);
			await page.keyboard.type(keys);
			await page.keyboard.press("Enter");
			entries++;
			await line.locator(".begin-mark.given").waitFor();
			expect(await missing(page)).not.toContain(entry);
			done(entry);
		}
		expect(entries).toBeLessThanOrEqual(MOST_ENTRIES);
		await expect.poll(() => workbook.headline()).toBe("The first plan is ready");
		await expect.poll(() => page.locator(".begin-answer").textContent()).toMatch(/kits are needed/);

		await page.keyboard.press("Enter");
		await page.locator(`a[data-sheet="this-week"][aria-current=page]`).waitFor();
		await expect.poll(() => page.locator(".problem-list.error").count()).toBe(0);
		expect((await workbook.row("Chlorine solution")).every((cell) => cell !== "–")).toBe(true);
		done("open the plan");

		await page.evaluate(() => {
			window.print = () => document.body.setAttribute("data-printed", "");
		});
		await tabTo(page, "Print this page");
		await page.keyboard.press("Enter");
		await page.locator("body[data-printed]").waitFor();
		const { text, pages } = readPdf(await page.pdf({ preferCSSPageSize: true }));
		expect(pages).toHaveLength(1);
		expect(text).toContain("Unnamed unit");
		expect(text).toContain("Mon 1 Mar 2027 to Sun 7 Mar 2027");
		done("print the plan");

		mkdirSync(output, { recursive: true });
		const report = { place, entries, steps };
		writeFileSync(
			join(output, `first-visit-${place.replaceAll(" ", "-")}.json`),
			`${JSON.stringify(report, null, "\t")}\n`,
		);
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});
});

describe("beginning", { timeout: 60_000 }, () => {
	const site = served;
	test("what is refused stays in its field with the reason; undo takes an entry back", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const { page } = workbook;
		await startEmpty(page);
		const births = page.getByLabel("Births a day");
		await births.focus();
		await page.keyboard.type("many");
		await page.keyboard.press("Enter");
		const reason = page.locator(".begin-line", { hasText: "Births a day" }).locator(".reason");
		await expect.poll(() => reason.textContent()).toContain("a number from 0 to 500");
		expect(await births.evaluate((field) => field === document.activeElement)).toBe(true);
		await expect.poll(() => births.inputValue()).toBe("many");
		await births.fill("6");
		await page.keyboard.press("Enter");
		await expect.poll(() => reason.textContent()).toBe("");
		await page.keyboard.press("Control+z");
		await expect.poll(() => births.inputValue()).toBe("");
		expect(await missing(page)).toContain("Births a day");
		await workbook.close();
	});

	test("the plan is printed from the page itself", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "begin");
		const { page } = workbook;
		await page.evaluate(() => {
			window.print = () => document.body.setAttribute("data-printed", location.hash);
		});
		await page.getByRole("button", { name: "Print the plan" }).click();
		expect(await page.locator("body").getAttribute("data-printed")).toBe("#this-week");
		const { text } = readPdf(await page.pdf({ preferCSSPageSize: true }));
		expect(text).toContain("Willow Ford");
		await workbook.close();
	});

	test("an empty page of a first visit is clean for axe and fits a phone", async () => {
		for (const options of [
			{ colorScheme: "light" },
			{ colorScheme: "dark", viewport: { width: 360, height: 740 } },
		] as const) {
			const workbook = await WorkbookPage.open(browser, site, { ...options, bypassCSP: true });
			const { page } = workbook;
			await startEmpty(page);
			expect(await axeViolations(workbook)).toEqual([]);
			const wide = await page.evaluate(() => document.documentElement.scrollWidth);
			expect(wide).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
			await workbook.close();
		}
	});

	test("from last week leads to Monday; moving on says what it does, and is one step back", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const { page } = workbook;
		const before = await workbook.table();
		await page.locator(".start summary").click();
		await page.getByRole("button", { name: "Start from last week" }).click();
		const step = page.locator(".monday-step", { hasText: "Move on to the new week" });
		await step.waitFor();
		await expect.poll(() => step.textContent()).toContain("Mon 8 Mar 2027 to Sun 14 Mar 2027");
		await expect.poll(() => step.textContent()).toContain("Wed 3 Mar: 8");
		await page.getByRole("button", { name: "Move on to Mon 8 Mar" }).click();
		await workbook.goTo("this-week");
		expect((await workbook.table())[0]?.[1]).toContain("8 Mar");
		await page.keyboard.press("Control+z");
		await expect.poll(() => workbook.table()).toEqual(before);
		await workbook.close();
	});
});
