import { describe, expect, test } from "vitest";
import { axeViolations, OF_COLOURS } from "./axeViolations.ts";
import { closeClean } from "./changedDemo.ts";
import { expectCautions, expectWholePaper } from "./expectWholePaper.ts";
import { browser, onStick, served } from "./fixture.ts";
import { readPdf } from "./paper.ts";
import { printOuts } from "./printOuts.ts";
import { WorkbookPage } from "./workbookPage.ts";

const LAPTOP = { width: 1366, height: 768 };
/** Where a page may not scroll sideways: beside a laptop's, those of a phone and of a laptop at 200 %. */
const NARROW = [
	{ width: 360, height: 740 },
	{ width: 683, height: 384 },
];

/**
 * The sheets are walked once for everything that is asked of each of them, because going
 * there is most of the work.
 */
describe("every sheet", { timeout: 300_000 }, () => {
	test("served: clean for axe in light and dark, no wider than the screen, spoken, whole on paper, within the policy", async () => {
		const workbook = await WorkbookPage.open(browser, served);
		const { page } = workbook;
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			await expectNoWider(workbook, sheet);
			if (await page.locator(".grid td").count()) {
				await expectSpoken(workbook, sheet);
				await workbook.click(0, 1);
			}
			expect(await axeViolations(workbook), sheet).toEqual([]);
			await page.emulateMedia({ colorScheme: "dark" });
			expect(await axeViolations(workbook, OF_COLOURS), `${sheet}, dark`).toEqual([]);
			await page.emulateMedia({ colorScheme: "light" });
			await expectPrinted(workbook, sheet);
		}
		// Drawn anew at each width, as who comes with such a screen finds it.
		for (const size of NARROW) {
			await page.setViewportSize(size);
			for (const sheet of await workbook.sheets()) {
				await workbook.goTo(sheet);
				await expectNoWider(workbook, sheet);
			}
		}
		await closeClean(workbook);
	});

	test("on a memory stick: whole on paper, within the policy", async () => {
		const workbook = await WorkbookPage.open(browser, onStick);
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			await expectPrinted(workbook, sheet);
		}
		await closeClean(workbook);
	});
});

async function expectNoWider({ page }: WorkbookPage, sheet: string): Promise<void> {
	const { width } = page.viewportSize() ?? LAPTOP;
	const wide = await page.evaluate(() => document.documentElement.scrollWidth);
	expect(wide, `${sheet} on ${width} px`).toBeLessThanOrEqual(width);
}

/** Beside the grid stands a table with the same cells, for who hears it. */
async function expectSpoken(workbook: WorkbookPage, sheet: string): Promise<void> {
	const table = await workbook.table();
	expect(table.length, sheet).toBeGreaterThan(1);
	await workbook.click(0, 0);
	const spoken = await workbook.page.locator(".grid").getAttribute("aria-label");
	expect(spoken, sheet).toContain(table[1]?.[0] || table[0]?.[0]);
}

/** As the browser's own print would have it; what is made for paper has a test of its own. */
async function expectPrinted({ page }: WorkbookPage, sheet: string): Promise<void> {
	if (printOuts.get(sheet)?.length) return;
	const paper = readPdf(await page.pdf({ preferCSSPageSize: true }));
	expectWholePaper(paper, sheet);
	expectCautions(sheet, [paper.text]);
}
