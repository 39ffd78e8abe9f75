import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, served as site } from "./fixture.ts";
import { focusIn, SOON } from "./sheetTools.ts";
import { WorkbookPage } from "./workbookPage.ts";

const questions = ({ page }: WorkbookPage) =>
	page.locator("[data-question] > summary span:first-child").allTextContents();

describe("finding the way", { timeout: 60_000 }, () => {
	test("who comes for the first time is asked how to begin; an address that names a page is not asked", async () => {
		const workbook = await WorkbookPage.open(browser, site, { bypassCSP: true }, "");
		const { page } = workbook;
		const asked = page.getByRole("dialog", { name: "How do you want to begin?" });
		await asked.waitFor();
		expect(await axeViolations(workbook)).toEqual([]);
		await expect
			.poll(() => asked.getByRole("button").allTextContents(), SOON)
			.toEqual(["Open a saved workbook", "Look at the demo", "Begin empty"]);
		const chooser = page.waitForEvent("filechooser");
		await page.getByRole("button", { name: "Open a saved workbook" }).click();
		await chooser;
		await closeClean(workbook);
		const direct = await WorkbookPage.open(browser, site, {}, "order.csv");
		await expect.poll(() => direct.page.locator("dialog[open]").count()).toBe(0);
		await closeClean(direct);
	});

	test("a role puts its questions first, hides none, and is one step of the workbook", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const before = await questions(workbook);
		const sheets = await workbook.sheets();
		await workbook.page.getByLabel("First for").selectOption("store");
		await expect.poll(async () => (await questions(workbook))[0], SOON).toBe("Stock and orders");
		expect([...(await questions(workbook))].sort()).toEqual([...before].sort());
		expect([...(await workbook.sheets())].sort()).toEqual([...sheets].sort());
		await workbook.goTo("unit.csv");
		expect((await workbook.row("Who works with this copy"))[1]).toBe("store");
		await workbook.page.getByRole("button", { name: "Undo" }).click();
		await expect.poll(() => questions(workbook), SOON).toEqual(before);
		await closeClean(workbook);
	});

	test("what is rarely needed lies folded in its question, and unfolds for the sheet that is open", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const rare = workbook.page.locator('a[data-sheet="how-safe.csv"]');
		expect(await rare.isVisible()).toBe(false);
		await workbook.page.locator('[data-question="week"] .rarely > summary').click();
		await rare.click();
		await workbook.page.locator('a[data-sheet="how-safe.csv"][aria-current=page]').waitFor();
		expect(await rare.isVisible()).toBe(true);
		await workbook.goTo("kit-cover.csv");
		await expect.poll(() => rare.isVisible(), SOON).toBe(false);
		await closeClean(workbook);
	});

	test("sheets of the same rows are one page with a switch, by keyboard too, each at its own address", async () => {
		const workbook = await WorkbookPage.open(browser, site, { bypassCSP: true }, "kits.csv");
		const { page } = workbook;
		const views = page.getByRole("navigation", { name: "Ways of looking at it" });
		const current = () => views.locator("[aria-current=page]").textContent();
		await expect.poll(current, SOON).toBe("As entered");
		const rail = page.locator('.rail a[data-sheet="kit-register.csv"]');
		await expect.poll(() => rail.getAttribute("aria-current"), SOON).toBe("true");
		expect(await page.locator('.rail a[data-sheet="kits.csv"]').isVisible()).toBe(false);
		await views.getByRole("link", { name: "How they stand" }).focus();
		await page.keyboard.press("Enter");
		await expect.poll(current, SOON).toBe("How they stand");
		expect(new URL(page.url()).hash).toBe("#kit-register.csv");
		await expect.poll(() => focusIn(workbook, "#views"), SOON).toBe(true);
		expect((await workbook.table())[0]?.[0]).toBe("Kit");
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.goTo("unit.csv");
		expect(await views.isVisible()).toBe(false);
		await workbook.goTo("this-week");
		await expect.poll(() => views.getByRole("link").count(), SOON).toBe(4);
		await closeClean(workbook);
	});

	test("settings stand under the names of their subjects and are found by what they say", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "unit.csv");
		const names = async () => (await workbook.table()).map(([first]) => first);
		expect(await names()).toEqual(expect.arrayContaining(["Kits", "Chlorine", "Boiled water"]));
		await workbook.page.getByLabel("Find a setting").fill("delivery beds");
		await expect.poll(async () => (await names()).slice(1), SOON).toEqual(["Delivery beds"]);
		await workbook.type(0, 1, "5");
		await expect.poll(async () => (await workbook.row("Delivery beds"))[1], SOON).toBe("5");
		await closeClean(workbook);
	});
});
