import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "./chromium.ts";
import { printedPages } from "./printedPages.ts";
import { type Site, siteOnStick } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const UNITS = 50;
const NEW_LOT = "A lot that is not in the list";
const HEADER =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,order_quantity,cost,run_out_on,order_by,months_of_stock,remark,emergency,pack_size,pack_price,unit_name";

/** An order file of an invented unit that is short of 30 swabs, and of gloves where it has an odd number. */
function orderOf(unit: number): string {
	const gloves = unit % 2 === 1 ? 10 : 0;
	return [
		HEADER,
		`Gauze swab,piece,70,0,80,100,1,100,2.4,,,,,no,100,2.4,Unit ${unit}`,
		`Gloves,pair,${50 - gloves},0,30,50,${gloves > 0 ? 1 : 0},${gloves > 0 ? 50 : 0},,,,,,no,50,,Unit ${unit}`,
		"",
	].join("\r\n");
}

describe("store and forecast, on a memory stick", { timeout: 90_000 }, () => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startBrowser(), siteOnStick()]);
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	const open = (sheet: string) => WorkbookPage.open(browser, site, {}, sheet);

	async function enter(workbook: WorkbookPage, fields: Record<string, string>): Promise<void> {
		const { page } = workbook;
		for (const [label, value] of Object.entries(fields)) {
			const field = page.getByLabel(label, { exact: false }).first();
			if ((await field.evaluate((e) => e.tagName)) === "SELECT") await field.selectOption(value);
			else await field.fill(value);
		}
		await page.getByRole("button", { name: "Enter", exact: true }).click();
	}

	test("the forecast's picture marks the days that carry a figure of the person's own", async () => {
		const workbook = await open("forecast.csv");
		const own = workbook.page.locator(".own-corner text");
		expect(await own.count()).toBe(2);
		await workbook.goTo("this-week");
		await workbook.type(0, 1, "9");
		await workbook.goTo("forecast.csv");
		expect(await own.count()).toBe(3);
		expect(await workbook.page.locator(".past-dot circle").count()).toBe(55);
		expect(await workbook.page.locator("figcaption").textContent()).toContain("3 days carry");
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
		expect(await workbook.headline()).not.toBe(before);
		expect(await workbook.page.locator(".under").textContent()).toContain(
			"60 births on 2027-01-04",
		);
		await workbook.close();
	});

	test("the scorecard and the learned share of kits speak in words", async () => {
		const workbook = await open("scorecard.csv");
		const { page } = workbook;
		expect(await page.locator(".saying").textContent()).toMatch(/46 of them \(98 in 100\)/);
		expect(await page.locator(".share.taken").textContent()).toContain("your setting: in the plan");
		await page.getByRole("link", { name: "Settings of the unit" }).last().click();
		await page.locator('a[data-sheet="unit.csv"][aria-current=page]').waitFor();
		await workbook.close();
	});

	test("an entered count changes stock and the order, says the difference, and undo brings all back", async () => {
		const workbook = await open("stock.csv");
		const { page } = workbook;
		const stock = await workbook.table();
		await enter(workbook, { Item: "Gauze swab", "How much": "20", "By whom": "A. N." });
		const said = page.locator(".entry-said");
		expect(await said.textContent()).toBe(
			"Gauze swab, lot G-301. Counted 20 pieces; the books said 140: 120 less than expected. On hand now: 20 pieces.",
		);
		const line = (await workbook.table()).find((cells) => cells[1] === "G-301");
		expect(line?.[3]).toBe("20.0");
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
		expect(await workbook.headline()).toContain("Gauze swab runs out before an order can arrive");
		await workbook.goTo("stock.csv");
		await page.locator("#undo").click();
		await expect.poll(() => workbook.table()).toEqual(stock);
		await workbook.goTo("order.csv");
		expect(await workbook.headline()).toBe("Order 1 pack of Liquid bleach 3.5 % today");
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
		expect(await wrong.textContent()).toMatch(/“1,000” was found; allowed is a number/);
		expect(await page.evaluate(() => document.activeElement?.id)).toBe("store-quantity");
		await page.keyboard.press("Control+a");
		await page.keyboard.type("139");
		await page.keyboard.press("Enter");
		expect(await wrong.textContent()).toBe("");
		expect(await page.locator(".entry-said").textContent()).toContain("1 less than expected");
		await workbook.close();
	});

	test("a lot that was on its way arrives once, and a new lot finds its place", async () => {
		const workbook = await open("stock.csv");
		const { page } = workbook;
		await page.getByLabel("Received").check();
		await enter(workbook, { Item: "Liquid bleach 3.5 %" });
		await page.getByLabel("Lot", { exact: true }).selectOption("B-0251");
		await enter(workbook, { "How much": "3000" });
		expect(await page.locator(".entry-said").textContent()).toContain(
			"3\u2009000 mL, 1\u2009000 less than ordered",
		);
		expect((await workbook.table()).find((cells) => cells[1] === "B-0251")?.[3]).toBe(
			"3\u2009000.0",
		);
		await page.getByLabel("Lot", { exact: true }).selectOption({ label: NEW_LOT });
		await enter(workbook, { "Number of the new lot": "B-0300", "How much": "1000" });
		expect((await workbook.table()).find((cells) => cells[1] === "B-0300")?.[3]).toBe(
			"1\u2009000.0",
		);
		await workbook.close();
	});

	test("stock ahead shows the item that is chosen, in weeks or months", async () => {
		const workbook = await open("stock-ahead.csv");
		const { page } = workbook;
		const words = page.locator(".stock-ahead figcaption");
		expect(await words.textContent()).toContain("Liquid bleach 3.5 % runs out on Sat 20 Mar");
		expect(await page.locator(".arrival-label").textContent()).toContain("+4\u2009000");
		await page.getByLabel("Item", { exact: true }).selectOption("Gauze swab");
		expect(await words.textContent()).toContain("Gauze swab runs out on Wed 24 Mar");
		expect(await page.locator(".stock-bar rect").count()).toBe(13);
		await page.getByRole("button", { name: "Months" }).click();
		expect(await page.locator(".stock-bar rect").count()).toBe(6);
		await workbook.close();
	});

	test.each(["light", "dark"] as const)(
		"a refused entry and a combined list are clean for axe, %s",
		async (colorScheme) => {
			const options = { colorScheme, bypassCSP: true };
			const workbook = await WorkbookPage.open(browser, site, options, "stock.csv");
			const { page } = workbook;
			await page.evaluate(axe);
			await page.getByLabel("Received").check();
			await page.getByLabel("Lot", { exact: true }).selectOption({ label: NEW_LOT });
			await enter(workbook, { "How much": "some" });
			await page.locator("#store-new-lot-wrong:not(:empty)").waitFor();
			expect(await violations(workbook)).toEqual([]);
			await workbook.goTo("several-units");
			await drop(workbook, [
				{ name: "a.csv", text: orderOf(1) },
				{ name: "b.csv", text: "nothing" },
			]);
			await page.locator(".shares-of summary").first().click();
			await page.locator(".shares-of li").first().waitFor();
			expect(await violations(workbook)).toEqual([]);
			await workbook.close();
		},
	);

	test.each(["A4", "Letter"] as const)(
		"order form, count sheet and storekeeper's page print on %s",
		async (format) => {
			const workbook = await open("order.csv");
			const order = await printedPages(workbook, "Print the order form", format);
			expect(order.pages).toBe(1);
			for (const words of [
				"Willow Ford",
				"ORDER NOW",
				"In all: 1 pack, 1.10 demo money",
				"Approved by",
				"Keep chlorine apart",
			])
				expect(order.text).toContain(words);
			await workbook.close();
			const counting = await open("stock.csv");
			const blind = await printedPages(counting, "Print a count sheet", format);
			expect(blind.text).toContain("G-301");
			expect(blind.text).not.toContain("Books say");
			await counting.close();
			const again = await open("lots.csv");
			const withBooks = await printedPages(again, "Print one with what the books say", format);
			expect(withBooks.text).toMatch(/G-301\s+31 Jan 2030\s+140/);
			expect(withBooks.pages).toBeLessThanOrEqual(2);
			await again.close();
			const keeper = await open("storekeeper");
			const page = await printedPages(keeper, "Print this page", format);
			expect(page.pages).toBe(1);
			const places = ["URGENT", "LATE", "ORDER", "USE FIRST", "EXPECT"].map((word) =>
				page.text.indexOf(word),
			);
			expect(places).toEqual([...places].sort((a, b) => a - b));
			expect(places[0]).toBeGreaterThan(0);
			await keeper.close();
		},
	);

	test("several units' orders: packs of the summed need, the bad file named, saved and printed", async () => {
		const workbook = await open("several-units");
		const { page } = workbook;
		const unitName = await page.locator("#unit-name").textContent();
		const files = Array.from({ length: UNITS }, (_, i) => ({
			name: "order.csv",
			text: orderOf(i + 1),
		}));
		const bad = { name: "births.csv", text: "date,births,note\n2027-03-01,5,\n" };
		const again = { name: "copy.csv", text: orderOf(1) };
		await drop(workbook, [...files, bad, again]);
		await expect.poll(() => workbook.headline()).toBe("50 units together: 20 packs of 2 items");
		const cells = await page
			.locator(".combined tbody tr")
			.evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)));
		expect(cells.find((row) => row[0] === "Gauze swab")?.slice(1, 4)).toEqual([
			"15",
			"1\u2009500 pieces",
			"1\u2009500 pieces",
		]);
		expect(cells.find((row) => row[0] === "Gloves")?.slice(1, 4)).toEqual([
			"5",
			"250 pairs",
			"250 pairs",
		]);
		const problems = (await page.locator(".problems").textContent()) ?? "";
		expect(problems).toContain("births.csv: not used.");
		expect(problems).toContain("copy.csv says the same as order.csv");
		expect(await page.locator("#unit-name").textContent()).toBe(unitName);
		const download = page.waitForEvent("download");
		await page.getByRole("button", { name: "Save the list (CSV)" }).click();
		const saved = readFileSync(await (await download).path(), "utf8");
		expect(saved).toContain("Unit 50: 30");
		expect(saved.split("\r\n")[1]).toMatch(/^Gauze swab,piece,3500,0,4000,5000,1500,15,1500,36,/);
		const printed = await printedPages(workbook, "Print with each unit's share");
		expect(printed.text).toContain("50 units together: 20 packs of 2 items");
		expect(printed.text).toContain("Unit 50: 30");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});

/** Drops files on the page, wherever the pointer is. */
async function drop(
	{ page }: WorkbookPage,
	files: readonly { readonly name: string; readonly text: string }[],
): Promise<void> {
	await page.evaluate((all) => {
		const dataTransfer = new DataTransfer();
		for (const { name, text } of all) dataTransfer.items.add(new File([text], name));
		document.body.dispatchEvent(
			new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
		);
	}, files);
}

/** What axe finds wrong on the page as it is. */
async function violations({ page }: WorkbookPage): Promise<string[]> {
	return page.evaluate(async () => {
		const { axe } = window as unknown as { axe: typeof import("axe-core") };
		const found = await axe.run(document);
		return found.violations.map(
			({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(" | ")}`,
		);
	});
}
