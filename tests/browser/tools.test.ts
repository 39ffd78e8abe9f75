import { describe, expect, test } from "vitest";
import { keyList } from "../../src/ui/shell/keyList.ts";
import { axeViolations } from "./axeViolations.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick, served } from "./fixture.ts";
import { arrange, lines, status } from "./sheetTools.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("tools, %s", { timeout: 60_000 }, (_, site) => {
	const open = (sheet: string, options = {}) => WorkbookPage.open(browser, site, options, sheet);

	test("cells are filled down and, in the plan, to the right, one step of undo each", async () => {
		const workbook = await open("kits.csv");
		const { page } = workbook;
		const before = await workbook.table();
		await workbook.click(0, 1);
		for (const key of ["Shift+ArrowDown", "Shift+ArrowDown", "Shift+ArrowRight"])
			await page.keyboard.press(key);
		await page.keyboard.press("Control+d");
		const after = await workbook.table();
		for (const row of [2, 3]) expect(after[row]?.slice(1, 3)).toEqual(before[1]?.slice(1, 3));
		expect(after[4]).toEqual(before[4]);
		await page.keyboard.press("Control+z");
		await expect.poll(() => workbook.table()).toEqual(before);
		await workbook.click(1, 0);
		await page.getByRole("button", { name: "Fill down" }).click();
		expect((await workbook.table())[2]?.[0]).toBe(before[1]?.[0]);
		expect(await status(workbook)).toBe("1 cell was filled.");

		await workbook.goTo("this-week");
		await workbook.type(0, 1, "21");
		await page.keyboard.press("ArrowUp");
		for (let day = 0; day < 3; day++) await page.keyboard.press("Shift+ArrowRight");
		await page.keyboard.press("Control+d");
		expect((await workbook.table())[1]?.slice(1, 5)).toEqual(["21", "21", "21", "21"]);
		expect(await status(workbook)).toBe("3 cells were filled.");
		await page.keyboard.press("Control+z");
		expect((await workbook.table())[1]?.slice(1, 3)).not.toEqual(["21", "21"]);
		// Friday shows the forecast: nothing is typed there that Saturday's own figure could give way to.
		await workbook.click(0, 6);
		await page.getByRole("button", { name: "Fill right" }).click();
		expect(await status(workbook)).toBe("Nothing was filled: the cell to copy is blank.");
		expect((await workbook.table())[1]?.[6]).toBe("4.5");
		await workbook.click(1, 4);
		await page.keyboard.press("Control+d");
		expect(await status(workbook)).toContain("the cells are computed");
		await workbook.goTo("unit.csv");
		await workbook.click(2, 1);
		await page.keyboard.press("Control+d");
		expect(await status(workbook)).toContain("Settings are not filled");
		await closeClean(workbook);
	});

	test("rows are inserted and deleted, by keys and buttons, and line numbers follow", async () => {
		const workbook = await open("kits.csv");
		const { page } = workbook;
		const before = await workbook.table();
		await workbook.click(1, 2);
		await page.keyboard.press("Alt+Insert");
		const blank = before[1]?.map(() => "");
		await expect
			.poll(() => workbook.table())
			.toEqual([...before.slice(0, 2), blank, ...before.slice(2)]);
		expect(await status(workbook)).toBe("Line 3 is a new, empty row.");
		expect(await lines(workbook)).toEqual(["2", "3", "4", "5", "6", "7", "8", "9", "+"]);
		await page.keyboard.press("Control+z");
		await expect.poll(() => workbook.table()).toEqual(before);
		await page.keyboard.press("Shift+ArrowDown");
		await page.keyboard.press("Alt+Delete");
		await expect.poll(() => workbook.table()).toEqual([...before.slice(0, 2), ...before.slice(4)]);
		expect(await status(workbook)).toBe("2 rows were deleted; Undo brings them back.");
		expect(await lines(workbook)).toEqual(["2", "3", "4", "5", "6", "+"]);
		await page.keyboard.press("Control+z");
		await expect.poll(() => workbook.table()).toEqual(before);
		await page.getByRole("button", { name: "Insert row" }).click();
		await page.getByRole("button", { name: "Delete rows" }).click();
		await expect.poll(() => workbook.table()).toEqual(before.toSpliced(2, 1));
		await workbook.goTo("day-plan.csv");
		await expect.poll(() => page.getByRole("button", { name: "Delete rows" }).count()).toBe(0);
		await workbook.click(0, 1);
		await page.keyboard.press("Alt+Delete");
		expect(await status(workbook)).toContain("not yours to add or delete");
		await closeClean(workbook);
	});

	test("every row can be deleted at once, and work goes on in the empty one", async () => {
		const workbook = await open("kits.csv");
		await workbook.click(0, 0);
		await workbook.page.keyboard.press("Control+a");
		await workbook.page.keyboard.press("Alt+Delete");
		expect(await lines(workbook)).toEqual(["+"]);
		await workbook.type(0, 0, "K9");
		expect((await workbook.table())[1]?.[0]).toBe("K9");
		await closeClean(workbook);
	});

	test("the list of keys opens with ? outside of fields, can do without it, and stands in the guide", async () => {
		const workbook = await open("this-week");
		const { page } = workbook;
		const dialog = page.locator("dialog.keys");
		await page.getByRole("button", { name: "Keyboard shortcuts" }).focus();
		await page.keyboard.press("?");
		const does = keyList.flatMap(({ keys }) => keys.map((key) => key.does));
		await expect.poll(() => dialog.locator("dd").allTextContents()).toEqual(does);
		await page.getByLabel("The key ? alone").uncheck();
		await page.keyboard.press("Escape");
		await page.keyboard.press("?");
		expect(await dialog.isVisible()).toBe(false);
		await page.getByRole("button", { name: "Keyboard shortcuts" }).click();
		await page.getByLabel("The key ? alone").check();
		await page.keyboard.press("Escape");
		await workbook.click(0, 1);
		await page.keyboard.press("?");
		expect(await dialog.isVisible()).toBe(false);
		await page.keyboard.press("Enter");
		expect((await workbook.table())[1]?.[1]).toBe("?");
		await page.goto(`${site.address}guide.html`);
		await expect.poll(() => page.locator("#keys dd").allTextContents()).toEqual(does);
		await closeClean(workbook);
	});

	test.each(["light", "dark"] as const)("all of it is clean for axe, %s", async (colorScheme) => {
		const workbook = await open("lots.csv", { colorScheme, bypassCSP: true });
		const { page } = workbook;
		await arrange(workbook, { by: "Lot", contains: "gauze" });
		await workbook.click(0, 1);
		await page.getByRole("button", { name: "Fill down" }).click();
		expect(await axeViolations(workbook)).toEqual([]);
		await page.keyboard.press("Control+k");
		await page.keyboard.type("gauze");
		await page.locator("dialog.find li").first().waitFor();
		expect(await axeViolations(workbook)).toEqual([]);
		await page.keyboard.press("Escape");
		await page.getByRole("button", { name: "Keyboard shortcuts" }).click();
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.close();
	});
});
