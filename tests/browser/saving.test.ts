import { describe, expect, test } from "vitest";
import { answer, asked } from "./pagesDisk.ts";
import {
	births,
	choose,
	dialog,
	kept,
	open,
	PROPOSED,
	patient,
	save,
	saved,
	saysSaved,
	title,
} from "./savingPage.ts";

describe("saving to a file", { timeout: 60_000 }, () => {
	test("the first time asks, with a name to know it by; after that Save goes to the same file", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		expect(await kept(page)).toBe("Draft kept here; not yet saved to a file");
		await save(page);
		await saysSaved(page, PROPOSED);
		await workbook.type(0, 2, "two");
		expect(await kept(page)).toBe(
			"Draft kept here; not yet saved in basinbook Wi…ed) 2027-03-01.zip",
		);
		await save(page);
		await saysSaved(page, PROPOSED);
		expect(await asked(page)).toEqual([PROPOSED]);
		expect(await births(page, PROPOSED)).toContain("two");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("Save as takes another file, and Save goes there from then on", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await saved(workbook, "a.zip");
		await workbook.type(0, 2, "two");
		await answer(page, "b.zip");
		await page.locator("#save-as").click();
		await saysSaved(page, "b.zip");
		await workbook.type(0, 2, "three");
		await save(page);
		await saysSaved(page, "b.zip");
		expect(await births(page, "a.zip")).toContain("one");
		expect(await births(page, "b.zip")).toContain("three");
		await workbook.close();
	});

	test("a file that was opened is saved back to itself; a new workbook is not", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await saved(workbook, "a.zip");
		await page.reload();
		await page.getByRole("button", { name: "Start from the demo" }).click();
		await page.locator("#open-files").click();
		await page.locator("#told", { hasText: "was opened" }).waitFor();
		expect((await workbook.table())[1]?.[2]).toBe("one");
		await workbook.type(0, 2, "two");
		await save(page);
		await saysSaved(page, "a.zip");
		expect(await asked(page)).toEqual([]);
		expect(await births(page, "a.zip")).toContain("two");
		await page.locator(".start summary").click();
		await page.locator("#start-demo").click();
		await answer(page, "other.zip");
		await save(page);
		await saysSaved(page, "other.zip");
		expect(await births(page, "a.zip")).toContain("two");
		await workbook.close();
	});

	test("closing the browser's window saves nothing; where the browser has none for this page, Save downloads", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await answer(page, "(closed)");
		await save(page);
		await expect.poll(() => asked(page), patient).toHaveLength(1);
		expect(await kept(page)).toBe("Draft kept here; not yet saved to a file");
		await answer(page, "(not allowed)");
		const download = page.waitForEvent("download");
		await save(page);
		const name = (await download).suggestedFilename();
		expect(name).toMatch(/^basinbook Willow Ford .* 2027-03-01 saved \d{4}-\d\d-\d\d\.zip$/);
		await expect.poll(() => kept(page), patient).toMatch(/^Downloaded as basinbook Wi….*zip$/);
		expect(await title(page)).toBe(name);
		await workbook.close();
	});

	test("a plan that moved on to other days does not take the file of the days before", async () => {
		const workbook = await open();
		const { page } = workbook;
		await saved(workbook, "first week.zip");
		await workbook.goTo("unit.csv");
		const row = (await workbook.table()).findIndex(([label]) => label === "First day of the plan");
		await workbook.type(row - 1, 1, "2027-03-08");
		await save(page);
		await expect.poll(() => dialog(page).textContent(), patient).toContain("begins on another day");
		await answer(page, undefined);
		await choose(page, "Save as another file");
		await saysSaved(page, PROPOSED.replace("03-01", "03-08"));
		await workbook.close();
	});

	test("Ctrl+S keeps the text that is being typed, and saves", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.click(0, 2);
		await page.keyboard.type("half a word");
		await answer(page, "a.zip");
		await page.keyboard.press("Control+s");
		await saysSaved(page, "a.zip");
		expect(await births(page, "a.zip")).toContain("half a word");
		await answer(page, "b.zip");
		await page.keyboard.press("Control+Shift+S");
		await saysSaved(page, "b.zip");
		await workbook.close();
	});
});
