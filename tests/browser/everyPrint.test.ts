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
