import { expect, test } from "vitest";
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
