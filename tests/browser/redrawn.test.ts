import { expect, test } from "vitest";
import { dropDemo } from "./droppedDemo.ts";
import { browser, onStick as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** Cells, selection and field take one or two, what stands around them a few more; the library by itself took eleven before the paint. */
const MOST_LAYOUTS = 9;

/** The cells as the grid shows them; columns that stay in place are drawn in the clone over the rest. */
const seen = (workbook: WorkbookPage, part: string) =>
	workbook.page
		.locator(`.grid ${part} tbody tr`)
		.evaluateAll((rows) =>
			rows.map((row) =>
				[...row.querySelectorAll("td")].map((cell) => cell.querySelector(".figure")?.textContent),
			),
		);

test("an edit beside the grid shows in every copy of its cell, and the cell stays selected", async () => {
	const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv");
	await workbook.click(1, 0);
	await workbook.page.keyboard.press("Alt+Enter");
	await workbook.page.locator("#entry-field").fill("15:45");
	await workbook.page.keyboard.press("Enter");
	for (const part of [".ht_master", ".ht_clone_left"])
		expect((await seen(workbook, part))[1]?.[0]).toBe("15:45");
	expect((await workbook.table())[2]?.[0]).toBe("15:45");
	await expect.poll(() => workbook.page.locator(".grid .ht_master td.current").count()).toBe(1);
	await workbook.close();
});

test("what is being typed beside the grid stays while all else is drawn anew, and is kept", async () => {
	const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv");
	const { page } = workbook;
	await workbook.type(1, 1, "Late round");
	await workbook.click(1, 0);
	await page.keyboard.press("Alt+Enter");
	await workbook.drawn();
	await page.locator("#entry-field").fill("15:45");
	// Pressed without the focus leaving the field, as what is drawn late comes between two keys.
	await page
		.getByRole("button", { name: "Undo", exact: true })
		.evaluate((button: HTMLButtonElement) => button.click());
	await expect.poll(async () => (await workbook.table())[2]?.[1]).not.toBe("Late round");
	await workbook.drawn();
	expect(await page.locator("#entry-field:focus").inputValue({ timeout: 2000 })).toBe("15:45");
	expect((await workbook.table())[2]?.[0]).not.toBe("15:45");
	await page.locator("#entry-field").press("Enter");
	await expect.poll(async () => (await workbook.table())[2]?.[0]).toBe("15:45");
	await workbook.close();
});

test("who goes on beside the grid as soon as a cell is selected is not called back to it", async () => {
	const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv");
	const { page } = workbook;
	await workbook.click(1, 0);
	await page.keyboard.press("Alt+Enter");
	// Without a turn of the browser between them, as on a computer that is slow.
	await page.evaluate(() => {
		const cell = document.querySelector(".grid .ht_master tbody tr:nth-child(3) td:nth-child(3)");
		for (const type of ["mousedown", "mouseup"])
			cell?.dispatchEvent(new MouseEvent(type, { bubbles: true, cancelable: true }));
		document.querySelector<HTMLElement>("aside button")?.focus();
	});
	await expect.poll(() => page.locator("#entry-field").inputValue()).toBe("Evening");
	await page.evaluate(() => new Promise((done) => setTimeout(done, 50)));
	expect(await page.locator("aside button:focus").count()).toBe(1);
	await workbook.close();
});

test("a field left open in the empty row does not write over what is filled in beside the grid", async () => {
	const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv");
	const { page } = workbook;
	const rows = (await workbook.table()).length;
	await workbook.click(rows - 2, 0);
	await page.keyboard.press("Alt+Enter");
	await workbook.drawn();
	await page
		.locator(".grid .ht_clone_left tbody tr")
		.nth(rows - 2)
		.locator("td")
		.first()
		.dblclick();
	await page.keyboard.press("Alt+Enter");
	await page.locator("#entry-field").fill("15:45");
	await page.locator("#entry-field").press("Enter");
	await expect.poll(async () => (await workbook.table()).length).toBe(rows + 1);
	await workbook.drawn();
	expect((await workbook.table())[rows - 1]?.[0]).toBe("15:45");
	// The cell stays the one it is: Alt and Enter did not leave it downwards.
	expect(await page.locator("#entry-field").inputValue()).toBe("15:45");
	await workbook.close();
});

test("what is being typed in a cell is kept where the focus goes to the field beside the grid", async () => {
	const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv");
	const { page } = workbook;
	await workbook.click(1, 1);
	await page.keyboard.press("Alt+Enter");
	await workbook.drawn();
	await page.locator(".grid .ht_master tbody tr:nth-child(2) td").nth(1).dblclick();
	await page.keyboard.type(", late");
	const typed = await page.locator(".grid textarea").first().inputValue();
	await page.locator("#entry-field").focus();
	await expect.poll(async () => (await workbook.table())[2]?.[1]).toBe(typed);
	await expect.poll(() => page.locator("#entry-field").inputValue()).toBe(typed);
	await workbook.close();
});

test("after undo the cell opens with the text that stands there", async () => {
	const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv");
	const before = (await workbook.table())[2]?.[1] as string;
	await workbook.type(1, 1, "Late round");
	await workbook.page.keyboard.press("ArrowUp");
	await workbook.page.keyboard.press("Control+z");
	await workbook.page.keyboard.press("F2");
	await expect
		.poll(() => workbook.page.locator(".grid textarea").first().inputValue())
		.toBe(before);
	await workbook.page.keyboard.press("Escape");
	await workbook.close();
});

test("a cell that is wrong is marked, put right it is not any more, and the others stay as they were", async () => {
	const workbook = await WorkbookPage.open(browser, site);
	const others = async () => (await seen(workbook, ".ht_master"))[0]?.toSpliced(2, 1);
	const before = await others();
	await workbook.type(0, 2, "many");
	const cell = workbook.page.locator(".grid .ht_master tbody tr:first-child td").nth(2);
	await expect.poll(() => cell.getAttribute("class")).toMatch(/\bbad\b/);
	await expect(cell.getAttribute("title")).resolves.toContain("many");
	expect(await others()).toEqual(before?.with(-1, "–"));
	for (const key of ["ArrowUp", "7", "Enter"]) await workbook.page.keyboard.press(key);
	await expect.poll(() => cell.getAttribute("class")).not.toMatch(/\bbad\b/);
	await expect.poll(() => cell.locator(".problem-mark").count()).toBe(0);
	await workbook.close();
});

test("in a year's plan the plain table follows the grid", async () => {
	const workbook = await WorkbookPage.open(browser, site);
	await dropDemo(workbook, { settings: { plan_days: "366" } });
	await workbook.page.getByRole("button", { name: "Next week" }).waitFor();
	// A week of it: the names, seven days, the week, the whole plan.
	await expect.poll(async () => (await workbook.table())[0]?.length).toBe(10);
	await workbook.click(0, 2);
	for (const births of ["31", "32"]) {
		await workbook.page.keyboard.type(births);
		await workbook.page.keyboard.press("Enter");
		await expect.poll(async () => (await workbook.table())[1]?.[2]).toBe(births);
		// Back by key: a second click on the cell would open it with the text that stands there.
		await workbook.page.keyboard.press("ArrowUp");
	}
	const [kits] = (await seen(workbook, ".ht_master")).slice(1, 2);
	expect((await workbook.row("Kits to reprocess"))[2]).toBe(kits?.[2]);
	await workbook.close();
});

test("the browser lays the page out a few times at an edit, not for each cell", async () => {
	const workbook = await WorkbookPage.open(browser, site);
	const { page, context } = workbook;
	const tools = await context.newCDPSession(page);
	await tools.send("Performance.enable");
	const layouts = async () => {
		await workbook.drawn();
		const { metrics } = await tools.send("Performance.getMetrics");
		return metrics.find(({ name }) => name === "LayoutCount")?.value ?? Number.NaN;
	};
	await workbook.type(0, 3, "20");
	await page.keyboard.press("ArrowUp");
	await page.keyboard.type("40");
	const before = await layouts();
	await page.keyboard.press("Enter");
	await expect.poll(async () => (await workbook.row("Births"))[3]).toBe("40");
	expect((await layouts()) - before).toBeLessThanOrEqual(MOST_LAYOUTS);
	await workbook.close();
});
