import { expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { expectCautions, expectWholePaper } from "./expectWholePaper.ts";
import { browser, served } from "./fixture.ts";
import { printed } from "./paper.ts";
import { printOuts } from "./printOuts.ts";
import { WorkbookPage } from "./workbookPage.ts";

test("whatever is made for paper is whole on A4 and on Letter", { timeout: 300_000 }, async () => {
	const workbook = await WorkbookPage.open(browser, served);
	for (const [sheet, outs] of printOuts) {
		await workbook.goTo(sheet);
		for (const { name } of outs) {
			for (const format of ["A4", "Letter"] as const) {
				const paper = await printed(workbook.page, name, format);
				expectWholePaper(paper, `${sheet}: ${name} on ${format}`);
				expectCautions(sheet, paper.pages, name);
			}
		}
	}
	expect(workbook.errors).toEqual([]);
	await workbook.close();
});

/** What a page is wider than the paper, by that the browser makes all of it smaller, and more than a third it cuts off. */
const SHRUNK_AT_MOST = 1.1;
/** Between the margins of A4 that lies, in pixels of style sheets. */
const A4_ACROSS_PX = 1046;

test.each(languages.map(({ code }) => folderOf(code)))(
	"sheets of many columns are not cut off at the paper's edge /%s",
	async (language) => {
		const at = { ...served, address: served.address + language };
		const workbook = await WorkbookPage.open(browser, at);
		const { page } = workbook;
		await page.emulateMedia({ media: "print" });
		await page.setViewportSize({ width: A4_ACROSS_PX, height: 700 });
		for (const sheet of ["day-plan.csv", "week-plan.csv", "how-safe.csv", "rounds-done.csv"]) {
			await workbook.goTo(sheet);
			await workbook.drawn();
			const wide = await page
				.locator(".plain-table")
				.evaluate((table) => table.getBoundingClientRect().width);
			expect(wide / A4_ACROSS_PX, sheet).toBeLessThan(SHRUNK_AT_MOST);
		}
		await workbook.close();
	},
);

test("printing again and again leaves no more to listen than printing once", async () => {
	const workbook = await WorkbookPage.open(browser, served, {}, "order.csv");
	const { page } = workbook;
	await page.evaluate(() => {
		window.print = () => {};
	});
	const print = page.getByRole("button", { name: "Print the order form" });
	for (let times = 0; times < 3; times++) await print.click();
	const tools = await workbook.context.newCDPSession(page);
	const { result } = await tools.send("Runtime.evaluate", { expression: "window" });
	const { objectId = "" } = result;
	const { listeners } = await tools.send("DOMDebugger.getEventListeners", { objectId });
	expect(listeners.filter(({ type }) => type === "afterprint")).toHaveLength(1);
	await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
	expect(await page.locator("body.on-paper").count()).toBe(0);
	await workbook.close();
});
