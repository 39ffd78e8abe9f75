import { describe, expect, test } from "vitest";
import { browser, served as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe("entering", { timeout: 60_000 }, () => {
	test("a block from a spreadsheet is pasted, new rows and all", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "births.csv");
		const before = (await workbook.table()).length;
		await workbook.click(before - 2, 0);
		await workbook.paste('2027-04-01\t7\tfirst\r\n2027-04-02\t8\t"two\nlines"\r\n');
		const after = await workbook.table();
		expect(after.slice(before - 1, before + 1)).toEqual([
			["2027-04-01", "7", "first"],
			["2027-04-02", "8", "two\nlines"],
		]);
		await workbook.page.keyboard.press("Control+z");
		expect((await workbook.table()).length).toBe(before);
		await workbook.close();
	});

	test("pasting ten million characters is refused in words and breaks nothing", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "kits.csv");
		const before = await workbook.table();
		await workbook.click(0, 4);
		await workbook.page.evaluate(() => {
			const data = new DataTransfer();
			data.setData("text/plain", "x".repeat(10_000_000));
			document.activeElement?.dispatchEvent(
				new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
			);
		});
		await expect
			.poll(() => workbook.page.locator("#told").textContent())
			.toContain("Nothing was pasted");
		await workbook.paste("y".repeat(20_000));
		await expect.poll(() => workbook.page.locator("#told").textContent()).toContain("left out");
		await expect.poll(() => workbook.table()).toEqual(before);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("markup and formulas in cells are text and act on nothing", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "kits.csv");
		const payload = `<img src=x onerror="document.title='broken'"><script>document.title='broken'</script>`;
		await workbook.click(0, 0);
		await workbook.paste(`${payload}\t${payload}\t${payload}\t${payload}\t=1+1${payload}`);
		for (const sheet of ["kits.csv", "this-week", "kit-cover.csv"]) {
			await workbook.goTo(sheet);
			await expect.poll(() => workbook.page.locator("#sheet img, #sheet script").count()).toBe(0);
		}
		await workbook.goTo("kits.csv");
		expect((await workbook.table())[1]?.[0]).toBe(payload);
		expect(await workbook.page.title()).not.toBe("broken");
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});

	test("a closed list offers its words, and still keeps another word as a problem", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "kits.csv");
		await workbook.click(0, 2);
		await workbook.page.keyboard.press("Enter");
		await workbook.page.locator(".choice", { hasText: "out of service" }).click();
		expect((await workbook.table())[1]?.[2]).toBe("out of service");
		await workbook.type(1, 2, "lent out");
		expect((await workbook.table())[2]?.[2]).toBe("lent out");
		await workbook.page.locator(".grid .ht_master td.bad", { hasText: "lent out" }).waitFor();
		await workbook.close();
	});

	test("the whole way by keyboard: into the grid, edit, why, undo, out again", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const { page } = workbook;
		await page.getByRole("button", { name: "Print this page" }).focus();
		for (const key of ["Tab", "ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
		await page.keyboard.type("21");
		await page.keyboard.press("Enter");
		expect((await workbook.table())[1]?.[2]).toBe("21");
		await page.locator(".pane h2", { hasText: "Why this number?" }).waitFor();
		await page.keyboard.press("Tab");
		expect(await page.evaluate(() => document.activeElement?.closest(".pane") !== null)).toBe(true);
		await page.keyboard.press("Enter");
		await page.keyboard.press("Control+z");
		expect((await workbook.table())[1]?.[2]).not.toBe("21");
		await page.keyboard.press("Shift+Tab");
		await page.keyboard.press("Shift+Tab");
		await page.keyboard.press("Shift+Tab");
		expect(await page.evaluate(() => document.activeElement?.closest(".desk") === null)).toBe(true);
		await workbook.close();
	});
});
