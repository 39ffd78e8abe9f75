import { describe, expect, test } from "vitest";
import { enterInStore } from "./enterInStore.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

const NEW_LOT = "A lot that is not in the list";
describe("store and forecast, on a memory stick", { timeout: 90_000 }, () => {
	const open = (sheet: string) => WorkbookPage.open(browser, site, {}, sheet);

	test("the forecast's picture marks the days that carry a figure of the person's own", async () => {
		const workbook = await open("forecast.csv");
		const own = workbook.page.locator(".own-corner text");
		await expect.poll(() => own.count()).toBe(2);
		await workbook.goTo("this-week");
		await workbook.type(0, 1, "9");
		await workbook.goTo("forecast.csv");
		await expect.poll(() => own.count()).toBe(3);
		await expect.poll(() => workbook.page.locator(".past-dot circle").count()).toBe(55);
		await expect
			.poll(() => workbook.page.locator("figcaption").textContent())
			.toContain("3 days carry");
		await workbook.page.keyboard.press("Control+z");
		await expect.poll(() => own.count()).toBe(2);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("two columns from a spreadsheet are pasted into the register, and its warnings show", async () => {
		const workbook = await open("records.csv");
		const before = await workbook.headline();
		const rows = (await workbook.table()).length;
		await workbook.click(0, 0);
		await workbook.paste("2027-01-04\t60\r\n2027-01-05\t4\r\n");
		expect((await workbook.table()).length).toBe(rows);
		await expect.poll(() => workbook.headline()).not.toBe(before);
		await expect
			.poll(() => workbook.page.locator(".under").textContent())
			.toContain("60 births on Mon 4 Jan");
		await workbook.close();
	});

	test("the scorecard and the learned share of kits speak in words", async () => {
		const workbook = await open("scorecard.csv");
		const { page } = workbook;
		await expect
			.poll(() => page.locator(".saying").textContent())
			.toMatch(/46 of them \(98 in 100\)/);
		await expect
			.poll(() => page.locator(".share.taken").textContent())
			.toContain("your setting: in the plan");
		await page.getByRole("link", { name: "Settings of the unit" }).last().click();
		await page.locator('a[data-sheet="unit.csv"][aria-current=page]').waitFor();
		await workbook.close();
	});

	test("an entered count changes stock and the order, says the difference, and undo brings all back", async () => {
		const workbook = await open("stock.csv");
		const { page } = workbook;
		const stock = await workbook.table();
		await enterInStore(workbook, { Item: "Gauze swab", "How much": "20", "By whom": "A. N." });
		const said = page.locator(".entry-said");
		await expect
			.poll(() => said.textContent())
			.toBe(
				"Gauze swab, lot G-301. Counted 20 pieces; the books said 140: 120 less than that. On hand now: 20 pieces.",
			);
		const line = (await workbook.table()).find((cells) => cells[1] === "G-301");
		expect(line?.[3]).toBe("20");
		expect(line?.[4]).toBe("−120");
		await workbook.goTo("journal.csv");
		expect((await workbook.table())[1]?.slice(1)).toEqual([
			"Gauze swab",
			"G-301",
			"count",
			"20",
			"A. N.",
		]);
		await workbook.goTo("order.csv");
		await expect
			.poll(() => workbook.headline())
			.toContain("Gauze swab runs out before an order can arrive");
		await workbook.goTo("stock.csv");
		await page.locator("#undo").click();
		await expect.poll(() => workbook.table()).toEqual(stock);
		await workbook.goTo("order.csv");
		await expect.poll(() => workbook.headline()).toBe("Order 2 packs of Liquid bleach 3.5 % today");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("by keyboard alone a bad entry is refused in words where it stands, and then put right", async () => {
		const workbook = await open("stock.csv");
		const { page } = workbook;
		await page.getByLabel("How much").focus();
		await page.keyboard.type("1,000");
		await page.keyboard.press("Enter");
		const wrong = page.locator("#store-quantity-wrong");
		await expect.poll(() => wrong.textContent()).toMatch(/“1,000” was found; allowed is a number/);
		expect(await page.evaluate(() => document.activeElement?.id)).toBe("store-quantity");
		await page.keyboard.press("Control+a");
		await page.keyboard.type("139");
		await page.keyboard.press("Enter");
		await expect.poll(() => wrong.textContent()).toBe("");
		await expect
			.poll(() => page.locator(".entry-said").textContent())
			.toContain("1 less than that");
		await workbook.close();
	});

	test("a lot that was on its way arrives once, and a new lot finds its place", async () => {
		const workbook = await open("stock.csv");
		const { page } = workbook;
		await page.getByLabel("Received").check();
		await enterInStore(workbook, { Item: "Liquid bleach 3.5 %" });
		await page.getByLabel("Lot", { exact: true }).selectOption("B-0251");
		await enterInStore(workbook, { "How much": "3000" });
		await expect
			.poll(() => page.locator(".entry-said").textContent())
			.toContain("3\u202f000 mL, 1\u202f000 less than ordered");
		expect((await workbook.table()).find((cells) => cells[1] === "B-0251")?.[3]).toBe("3\u202f000");
		await page.getByLabel("Lot", { exact: true }).selectOption({ label: NEW_LOT });
		await enterInStore(workbook, { "Number of the new lot": "B-0300", "How much": "1000" });
		expect((await workbook.table()).find((cells) => cells[1] === "B-0300")?.[3]).toBe("1\u202f000");
		await workbook.close();
	});

	test("stock ahead shows the item that is chosen, in weeks or months", async () => {
		const workbook = await open("stock-ahead.csv");
		const { page } = workbook;
		const words = page.locator(".stock-ahead figcaption");
		await expect
			.poll(() => words.textContent())
			.toContain("Liquid bleach 3.5 % runs out on Fri 19 Mar");
		await expect.poll(() => page.locator(".arrival-label").textContent()).toContain("+4\u202f000");
		await page.getByLabel("Item", { exact: true }).selectOption("Gauze swab");
		await expect.poll(() => words.textContent()).toContain("Gauze swab runs out on Tue 23 Mar");
		await expect.poll(() => page.locator(".stock-bar rect").count()).toBe(13);
		await page.getByRole("button", { name: "Months" }).click();
		await expect.poll(() => page.locator(".stock-bar rect").count()).toBe(6);
		await workbook.close();
	});

	test.each(["A4", "Letter"] as const)(
		"order form, count sheet and storekeeper's page print on %s",
		async (format) => {
			const workbook = await open("order.csv");
			const order = await printed(workbook.page, "Print the order form", format);
			expect(order.pages).toHaveLength(1);
			for (const words of [
				"Willow Ford",
				"ORDER NOW",
				"In all: 2 packs, 2.20 demo money",
				"Approved by",
				"Keep chlorine apart",
			])
				expect(order.text).toContain(words);
			await workbook.close();
			const counting = await open("stock.csv");
			const blind = await printed(counting.page, "Print a count sheet", format);
			expect(blind.text).toContain("G-301");
			expect(blind.text).not.toContain("Books say");
			await counting.close();
			const again = await open("lots.csv");
			const withBooks = await printed(again.page, "Print one with what the books say", format);
			expect(withBooks.text).toMatch(/G-301\s+31 Jan 2030\s+140/);
			expect(withBooks.pages.length).toBeLessThanOrEqual(2);
			await again.close();
			const keeper = await open("storekeeper");
			const page = await printed(keeper.page, "Print this page", format);
			expect(page.pages).toHaveLength(1);
			const places = ["URGENT", "LATE", "ORDER", "USE FIRST", "ON THE WAY"].map((word) =>
				page.text.indexOf(word),
			);
			expect(places).toEqual([...places].sort((a, b) => a - b));
			expect(places[0]).toBeGreaterThan(0);
			await keeper.close();
		},
	);
});
