import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { closeClean, openChanged } from "./changedDemo.ts";
import { comparedRow } from "./comparedRow.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";
import { savedFolder } from "./savedFolder.ts";
import { WorkbookPage } from "./workbookPage.ts";

const COPY = "One round a day";

describe("what if", { timeout: 60_000 }, () => {
	const folder = savedFolder();

	/** The demo, with a kept copy that has one round a day and one delivery bed more. */
	const withCopy = () =>
		openChanged(browser, site, "what-if", {
			"kept-settings.csv": () =>
				["name,of,key,value", `${COPY},setting,delivery_beds,3`, `${COPY},round,09:00,Only`].join(
					"\n",
				),
		});

	test("a copy is kept by keyboard, settings are changed, and both stand side by side", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "what-if");
		const { page } = workbook;
		await expect.poll(() => workbook.headline()).toContain("Change something in the copy");
		await page.getByLabel("Name of the new copy").focus();
		await page.keyboard.press("Enter");
		await expect
			.poll(() => page.locator("#store-kept-name-wrong").textContent())
			.toContain("needs a name");
		await page.keyboard.type("As it was");
		await page.keyboard.press("Enter");
		await expect
			.poll(() => page.locator("#sheet").textContent())
			.toContain("Both sides have the same settings");
		await page.getByLabel("Name of the new copy").fill("As it was");
		await page.keyboard.press("Enter");
		await expect
			.poll(() => page.locator("#store-kept-name-wrong").textContent())
			.toContain("kept already");

		await workbook.goTo("begin");
		await page.getByLabel("Delivery beds").fill("9");
		await page.keyboard.press("Enter");
		await workbook.goTo("what-if");
		await expect
			.poll(() => workbook.headline())
			.toMatch(/^Both are as safe: .* needs \d kits, \d kits? fewer$/);
		expect(await comparedRow(workbook, "Delivery beds")).toEqual(["9", "2"]);
		expect((await comparedRow(workbook, "Decided by"))[0]).toBe("beds");
		expect((await comparedRow(workbook, "Kits needed"))[2]).toMatch(/^−\d$/);
		await closeClean(workbook);
	});

	test("only needs without a kit are called better or worse, in words", async () => {
		const workbook = await withCopy();
		expect((await comparedRow(workbook, "Times no kit is ready when needed"))[2]).toContain(
			"worse",
		);
		await expect.poll(() => workbook.page.locator(".verdict").count()).toBe(1);
		await workbook.page.getByLabel("Compare").selectOption(COPY);
		await expect.poll(() => workbook.headline()).toContain("choose two different");
		await workbook.page.getByLabel("with", { exact: true }).selectOption("");
		expect((await comparedRow(workbook, "Times no kit is ready when needed"))[2]).toContain(
			"better",
		);
		await closeClean(workbook);
	});

	test("taking a copy back is one step; deleting one is another, and both can be undone", async () => {
		const workbook = await withCopy();
		const { page } = workbook;
		const title = await workbook.headline();
		await page.getByRole("button", { name: `Use this copy: ${COPY}` }).click();
		await expect
			.poll(() => page.locator("#sheet").textContent())
			.toContain("Both sides have the same settings");
		await workbook.goTo("rounds.csv");
		expect((await workbook.table()).slice(1, 3).map(([at]) => at)).toEqual(["09:00", ""]);
		await page.keyboard.press("Control+z");
		expect((await workbook.table())[1]?.[0]).toBe("07:00");
		await workbook.goTo("what-if");
		await expect.poll(() => workbook.headline()).toBe(title);
		await page.getByRole("button", { name: `Delete the copy: ${COPY}` }).click();
		await expect.poll(() => page.locator(".kept-copies li").count()).toBe(0);
		await page.getByRole("button", { name: "Undo" }).click();
		await expect.poll(() => workbook.headline()).toBe(title);
		await closeClean(workbook);
	});

	test("any figure says why; a setting of the copy leads to the copy's own row", async () => {
		const workbook = await withCopy();
		const { page } = workbook;
		const asked = page.getByRole("button", { name: /Kits needed, “One round a day”. Why\?/ });
		await asked.focus();
		await page.keyboard.press("Enter");
		const pane = page.locator(".what-if .pane");
		await expect.poll(() => pane.textContent()).toContain("Why this number?");
		await page.keyboard.press("Escape");
		expect(await asked.evaluate((button) => button === document.activeElement)).toBe(true);
		await page.keyboard.press("Enter");
		await pane.getByRole("button", { name: "computed: why?" }).first().click();
		await pane.locator("li", { hasText: "Delivery beds" }).getByRole("button").click();
		await page
			.locator(`a[data-sheet="kept-settings.csv"][aria-current=page]`)
			.waitFor({ state: "attached" });
		await closeClean(workbook);
	});

	test("a side without an answer says why, and the other side's figures still stand", async () => {
		const workbook = await openChanged(browser, site, "what-if", {
			"kept-settings.csv": () => "name,of,key,value\nodd,setting,delivery_beds,three\n",
		});
		await expect.poll(() => workbook.headline()).toContain("No answer yet for “odd”");
		await expect
			.poll(() => workbook.page.locator(".what-if-troubles").textContent())
			.toContain("three");
		const [now, odd] = await comparedRow(workbook, "Kits needed");
		expect([now, odd]).toEqual([expect.stringMatching(/^\d$/), "–"]);
		await closeClean(workbook);
	});

	test("copies are saved with the workbook and come back with it", async () => {
		const workbook = await withCopy();
		const { page } = workbook;
		const title = await workbook.headline();
		const download = page.waitForEvent("download");
		await page.locator("#save-workbook").click();
		const path = join(folder, "saved.zip");
		await (await download).saveAs(path);
		await page.locator(".start summary").click();
		await page.getByRole("button", { name: "Start from the demo" }).click();
		await expect.poll(() => workbook.headline()).toContain("Change something in the copy");
		const chooser = page.waitForEvent("filechooser");
		await page.locator("#open-files").click();
		await (await chooser).setFiles(path);
		await expect.poll(() => workbook.headline(), { timeout: 8_000 }).toBe(title);
		await closeClean(workbook);
	});

	test("both sides print on one upright page, signed", async () => {
		const workbook = await withCopy();
		const { text, pages, width, height } = await printed(workbook.page, "Print this page");
		expect(width).toBeLessThan(height);
		expect(pages).toHaveLength(1);
		for (const words of [COPY, "Delivery beds", "Kits needed", "Prepared by", "Willow Ford"])
			expect(text).toContain(words);
		await closeClean(workbook);
	});

	test("with tables and reasons open it is clean for axe and fits a phone", async () => {
		for (const options of [
			{ colorScheme: "light" },
			{ colorScheme: "dark", viewport: { width: 360, height: 740 } },
		] as const) {
			const workbook = await WorkbookPage.open(
				browser,
				site,
				{ ...options, bypassCSP: true },
				"what-if",
			);
			const { page } = workbook;
			for (const name of ["First", "Second, with a name that goes on and on for a narrow screen"]) {
				await page.getByLabel("Name of the new copy").fill(name);
				await page.keyboard.press("Enter");
			}
			await page
				.getByRole("button", { name: /Kits needed, .* Why/ })
				.first()
				.click();
			expect(await axeViolations(workbook)).toEqual([]);
			const wide = await page.evaluate(() => document.documentElement.scrollWidth);
			expect(wide).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
			await workbook.close();
		}
	});
});
