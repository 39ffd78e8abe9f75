import { describe, expect, test } from "vitest";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick, served } from "./fixture.ts";
import { arrange, focusIn, lines, SOON, status } from "./sheetTools.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("sorted and filtered rows, %s", { timeout: 60_000 }, (_, site) => {
	const open = (sheet: string, options = {}) => WorkbookPage.open(browser, site, options, sheet);

	test("sorted and filtered rows are edited where they stand in the file, and leaving the sheet shows all", async () => {
		const workbook = await open("lots.csv");
		const { page } = workbook;
		const file = await workbook.table();
		await arrange(workbook, { by: "Expires on", order: "descending", contains: "LIQUID bleach" });
		await expect
			.poll(() => status(workbook), SOON)
			.toBe("3 of 18 rows shown, sorted by Expires on, descending");
		expect(await lines(workbook)).toEqual(["4", "3", "2", "+"]);
		await workbook.type(0, 2, "4321");
		await workbook.click(1, 1);
		await workbook.paste("X-1\t77\r\nX-2\t88\r\nX-3\t99\r\n");
		await expect.poll(() => lines(workbook)).toEqual(["4", "3", "2", "20", "+"]);
		// A row that no longer fits the filter stays in sight until rows are chosen anew.
		await workbook.type(2, 0, "Soap");
		await expect.poll(() => lines(workbook)).toEqual(["4", "3", "2", "20", "+"]);
		await page.keyboard.press("Control+z");
		await workbook.click(0, 0);
		await page.keyboard.press("Alt+Insert");
		expect(await status(workbook)).toContain("Nothing was inserted");
		await workbook.goTo("kits.csv");
		await workbook.goTo("lots.csv");
		expect(await status(workbook)).toBe("");
		const wanted = file.map((cells) => [...cells]);
		wanted[3]?.splice(2, 1, "4321");
		wanted[2]?.splice(1, 2, "X-1", "77");
		wanted[1]?.splice(1, 2, "X-2", "88");
		wanted.splice(-1, 0, ["", "X-3", "99", "", "", "", "", ""].slice(0, file[0]?.length));
		await expect.poll(() => workbook.table()).toEqual(wanted);
		await closeClean(workbook);
	});

	test("deleting among filtered rows takes only rows that are seen", async () => {
		const workbook = await open("lots.csv");
		const { page } = workbook;
		const file = await workbook.table();
		await workbook.click(9, 1);
		await arrange(workbook, { contains: "gloves" });
		await expect.poll(async () => (await lines(workbook)).length, SOON).toBeLessThan(6);
		const seen = (await lines(workbook)).filter((line) => line !== "+").map(Number);
		expect(seen.length).toBeGreaterThan(1);
		// The selected row is out of sight: nothing can be written there, and the field keeps the focus.
		await expect.poll(() => page.locator(".pane input").count()).toBe(0);
		expect(await focusIn(workbook, "#arrange-contains")).toBe(true);
		await workbook.click(0, 0);
		await page.keyboard.press("Control+a");
		await page.getByRole("button", { name: "Delete rows" }).click();
		await page.getByRole("button", { name: "All rows, as in the file" }).click();
		await expect
			.poll(() => workbook.table())
			.toEqual(file.filter((__, at) => !seen.includes(at + 1)));
		await closeClean(workbook);
	});

	test("a problem in a row that the filter hides is gone to, and the filter cleared in words", async () => {
		const workbook = await open("kits.csv");
		const { page } = workbook;
		await workbook.type(1, 3, "yesterday");
		await arrange(workbook, { by: "Kit", order: "descending", contains: "no such text" });
		await expect.poll(() => lines(workbook), SOON).toEqual(["+"]);
		await page.locator(".under .problem-list button").first().click();
		await expect.poll(() => page.locator("#told").textContent()).toContain("filter hid this row");
		await expect.poll(() => page.locator("#entry-field").inputValue()).toBe("yesterday");
		expect(await status(workbook)).toContain("7 of 7 rows shown, sorted by Kit");
		await expect.poll(() => page.getByLabel("contains").inputValue()).toBe("");
		await closeClean(workbook);
	});

	test("a computed sheet is sorted by its values and says where no row is left", async () => {
		const workbook = await open("day-plan.csv");
		const { page } = workbook;
		const days = (await workbook.table()).slice(1).map(([day]) => day);
		await arrange(workbook, { by: "Date", order: "descending" });
		const shown = async () => (await workbook.table()).slice(1).map(([day]) => day);
		expect(await shown()).toEqual(days.toReversed());
		await arrange(workbook, { contains: "no such text" });
		await page.locator(".grid .nothing", { hasText: "No row contains this text." }).waitFor();
		await page.getByRole("button", { name: "All rows, as in the file" }).click();
		expect(await shown()).toEqual(days);
		await workbook.click(0, 0);
		await closeClean(workbook);
	});
});
