import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
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
		const cells = await page
			.locator(".combined tbody tr")
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
		const problems = (await page.locator(".problems").textContent()) ?? "";
		expect(problems).toContain("births.csv: not used.");
		expect(problems).toContain("copy.csv says the same as order.csv");
		expect(await page.locator("#unit-name").textContent()).toBe(unitName);
		const download = page.waitForEvent("download");
		await page.getByRole("button", { name: "Save the list (CSV)" }).click();
		const saved = readFileSync(await (await download).path(), "utf8");
		expect(saved).toContain("Unit 50: 30");
		expect(saved.split("\r\n")[1]).toMatch(/^Gauze swab,piece,3500,0,4000,5000,1500,15,1500,36,/);
		const paper = await printed(workbook.page, "Print with each unit's share");
		expect(paper.text).toContain("50 units together: 20 packs of 2 items");
		expect(paper.text).toContain("Unit 50: 30");
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
