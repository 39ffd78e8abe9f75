import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { inventedUnit, unitName as nameOfUnit } from "../district/inventedUnit.ts";
import { axeViolations } from "./axeViolations.ts";
import { drop } from "./drop.ts";
import { enterInStore } from "./enterInStore.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

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

describe("several units' orders, on a memory stick", { timeout: 90_000 }, () => {
	test.each(["light", "dark"] as const)(
		"a refused entry and a combined list are clean for axe, %s",
		async (colorScheme) => {
			const options = { colorScheme, bypassCSP: true };
			const workbook = await WorkbookPage.open(browser, site, options, "stock.csv");
			const { page } = workbook;
			await page.getByLabel("Received").check();
			await page.getByLabel("Lot", { exact: true }).selectOption({ label: NEW_LOT });
			await enterInStore(workbook, { "How much": "some" });
			await page.locator("#store-new-lot-wrong:not(:empty)").waitFor();
			expect(await axeViolations(workbook)).toEqual([]);
			await workbook.goTo("several-units");
			await drop(workbook, [
				{ name: "a.csv", text: orderOf(1) },
				{ name: "b.csv", text: "nothing" },
			]);
			await page.locator(".shares-of summary").first().click();
			await page.locator(".shares-of li").first().waitFor();
			await page.getByRole("button", { name: "Picture of Unit 1" }).click();
			await page.locator(".unit-picture").waitFor();
			await page.getByText("The district's own store", { exact: true }).click();
			expect(await axeViolations(workbook)).toEqual([]);
			await workbook.close();
		},
	);

	test("several units' orders: packs of the summed need, the bad file named, saved and printed", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "several-units");
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
		await expect.poll(() => page.locator(".units-table tbody tr").count()).toBe(50);
		const cells = await page
			.locator(".order-part tbody tr")
			.evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)));
		expect(cells.find((row) => row[0] === "Gauze swab")?.slice(1, 4)).toEqual([
			"15",
			"1\u202f500 pieces",
			"1\u202f500 pieces",
		]);
		expect(cells.find((row) => row[0] === "Gloves")?.slice(1, 4)).toEqual([
			"5",
			"250 pairs",
			"250 pairs",
		]);
		const first = page.locator(".units-table tbody tr").first();
		await expect.poll(() => first.textContent()).toMatch(/^births\.csv✕ not read/);
		await expect
			.poll(() => page.locator(".district-notes").textContent())
			.toContain("order.csv says the same as copy.csv");
		await expect.poll(() => page.locator("#unit-name").textContent()).toBe(unitName);
		const download = page.waitForEvent("download");
		await page.getByRole("button", { name: "Save the order (CSV)" }).click();
		const saved = readFileSync(await (await download).path(), "utf8");
		expect(saved.split("\r\n")[1]).toMatch(
			/^Gauze swab,piece,50,50,0,0,3500,0,4000,5000,1500,,1500,100,15,1500,36,50,/,
		);
		const paper = await printed(workbook.page, "Print with each unit's share");
		expect(paper.text).toContain("50 units together: 20 packs of 2 items");
		expect(paper.text).toMatch(/Unit 50 +Gauze swab: 30 pieces/);
		// A page that stood another way than the first would be cut: the last column would be missing.
		const shares = paper.pages.filter((text) => /Unit \d+ +Gauze swab: 30/.test(text));
		expect(shares.length).toBeGreaterThan(1);
		expect(shares.filter((text) => !text.includes("Given,"))).toEqual([]);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("workbooks: the worst first, a broken one with its reason, a picture, its own plan read only", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "several-units");
		const { page } = workbook;
		const unitName = await page.locator("#unit-name").textContent();
		const files = [1, 2, 10].map((seed) => ({
			name: `unit-${seed}.zip`,
			bytes: zipTexts(inventedUnit(seed)),
		}));
		await drop(workbook, [...files, { name: "broken.zip", text: "PK" }]);
		const rows = page.locator(".units-table tbody tr");
		await expect.poll(() => rows.count()).toBe(4);
		await expect.poll(() => rows.first().textContent()).toContain("broken.zip is not a zip file");
		await page.getByRole("button", { name: `Picture of ${nameOfUnit(2)}` }).press("Enter");
		await page.locator(".unit-picture svg").waitFor();
		const look = page.getByRole("button", { name: `Its plan: ${nameOfUnit(2)}, read only` });
		await look.press("Enter");
		await page.locator(".unit-plan .plain-table td").first().waitFor();
		await expect.poll(() => workbook.headline()).toBe(nameOfUnit(2));
		await page.locator(".unit-plan select").selectOption({ label: "What to order" });
		await page.locator(".unit-plan caption").filter({ hasText: "What to order" }).waitFor();
		await expect
			.poll(() => page.locator(".unit-plan input, .unit-plan [contenteditable]").count())
			.toBe(0);
		await page.getByRole("button", { name: "Back to the units" }).press("Enter");
		await expect.poll(() => look.evaluate((each) => each === document.activeElement)).toBe(true);
		await expect.poll(() => page.locator("#unit-name").textContent()).toBe(unitName);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("of many units a page of rows is drawn, a search finds the others, and a stop leaves the rest waiting", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "several-units");
		const { page } = workbook;
		const zip = zipTexts(inventedUnit(1));
		const orders = Array.from({ length: 120 }, (_, i) => ({
			name: `a${i}.csv`,
			text: orderOf(i + 1),
		}));
		await drop(workbook, orders);
		const rows = page.locator(".units-table tbody tr");
		await expect.poll(() => workbook.headline()).toContain("120 units together");
		await expect.poll(() => rows.count()).toBe(50);
		await page.getByRole("button", { name: "Next page" }).click();
		await page.getByText("51 to 100 of 120 units").waitFor();
		await page.getByLabel("Search units").fill("unit 77");
		await page.getByText("1 to 1 of 1 unit", { exact: true }).waitFor();
		// The page answers between two units: it is stopped after the first of the next ones.
		await page.evaluate(() => {
			const bar = document.querySelector(".progress");
			const stop = bar?.querySelector("button");
			new MutationObserver((_, watch) => {
				if (!bar?.textContent?.startsWith("1 of")) return;
				watch.disconnect();
				setTimeout(() => stop?.click());
			}).observe(bar as Node, { childList: true, subtree: true, characterData: true });
		});
		await drop(
			workbook,
			[1, 2, 3, 4].map((i) => ({ name: `w${i}.zip`, bytes: zip })),
		);
		await page.locator(".district-notes").getByText("The reading was stopped").waitFor();
		await page.getByRole("button", { name: "Read on" }).click();
		await expect.poll(() => workbook.headline()).toContain("121 units together");
		await workbook.close();
	});

	test("names that are one, typed on the page, are kept and taken together; a line that is not understood holds the order back", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "several-units");
		const { page } = workbook;
		const other = orderOf(2).replace("Gauze swab", "Gauze 10x10");
		await drop(workbook, [
			{ name: "a.csv", text: orderOf(1) },
			{ name: "b.csv", text: other },
		]);
		await expect.poll(() => workbook.headline()).toBe("2 units together: 3 packs of 3 items");
		await page.getByText("Names of items in the district", { exact: true }).click();
		const names = page.getByLabel("Lines of “Names of items in the district”");
		await names.fill("Gauze 10x10, Gauze swab");
		await names.blur();
		await expect.poll(() => workbook.headline()).toBe("2 units together: 2 packs of 2 items");
		await page.getByText("The district's own store", { exact: true }).click();
		const store = page.getByLabel("Lines of “The district's own store”");
		await store.fill("Gauze swab, some");
		await store.blur();
		await page.locator(".district-notes").getByText("There is no order while a line").waitFor();
		expect(await page.getByRole("button", { name: "Save the order (CSV)" }).isDisabled()).toBe(
			true,
		);
		await store.fill("Gauze swab, 60");
		await store.blur();
		await expect.poll(() => workbook.headline()).toBe("2 units together: 1 pack of 1 item");
		await page.reload();
		await page.locator("#sheet h1").waitFor();
		await expect.poll(() => names.inputValue()).toBe("Gauze 10x10, Gauze swab");
		await workbook.close();
	});
});
