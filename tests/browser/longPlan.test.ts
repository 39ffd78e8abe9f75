import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { closeClean, openChanged } from "./changedDemo.ts";
import { expectCautions, expectWholePaper } from "./expectWholePaper.ts";
import { browser, served as site } from "./fixture.ts";
import { printed, readPdf } from "./paper.ts";
import { SOON } from "./sheetTools.ts";
import type { WorkbookPage } from "./workbookPage.ts";

const unit = readFileSync(join(import.meta.dirname, "../../sample-csv/unit.csv"), "utf8");

function opened(days: number): Promise<WorkbookPage> {
	const changed = unit.replace(/^plan_days,.*$/m, `plan_days,${days}`);
	return openChanged(browser, site, "this-week", { "unit.csv": () => changed });
}

async function head(workbook: WorkbookPage): Promise<string[]> {
	return (await workbook.table())[0] ?? [];
}

describe("a long plan", { timeout: 120_000 }, () => {
	test("a month is turned week by week; births go to the day that is seen; all weeks stand together", async () => {
		const workbook = await opened(31);
		const { page } = workbook;
		await page.getByLabel("Week", { exact: true }).waitFor();
		await expect.poll(() => head(workbook), SOON).toHaveLength(10);
		await page.getByRole("button", { name: "Next week" }).click();
		await expect.poll(async () => (await head(workbook))[1], SOON).toBe("Mon 8 Mar");
		await workbook.type(0, 3, "9.5");
		await expect.poll(async () => (await workbook.row("Births"))[3], SOON).toBe("9.5");
		const paper = readPdf(await page.pdf({ preferCSSPageSize: true }));
		expect(paper.pages).toHaveLength(1);
		expect(paper.text).toContain("Week 2 of 5: Mon 8 Mar to Sun 14 Mar 2027");
		expect(paper.text).toContain("Sun 7 Mar, by");
		expect(paper.text).not.toContain("Mon 1 Mar, by");
		await page.getByLabel("Week", { exact: true }).selectOption({ index: 4 });
		await expect.poll(() => head(workbook), SOON).toHaveLength(6);
		await page.getByRole("link", { name: "All weeks together" }).click();
		await page.locator(`#views a[href="#week-plan.csv"][aria-current=page]`).waitFor();
		await expect.poll(async () => (await workbook.table()).length, SOON).toBe(6);
		await expect.poll(() => page.locator(".weeks-pictures svg").count(), SOON).toBe(9);
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.goTo("births.csv");
		await expect.poll(async () => (await workbook.row("2027-03-10"))[1], SOON).toBe("9.5");
		await closeClean(workbook);
	});

	test("a year prints as weeks, a page each, and no day is left out", async () => {
		const workbook = await opened(366);
		await workbook.page.getByLabel("Week", { exact: true }).waitFor();
		const paper = await printed(workbook.page, "Print every week");
		expect(paper.pages).toHaveLength(53);
		expect(paper.width).toBeGreaterThan(paper.height);
		expectCautions("this-week", paper.pages);
		const days = paper.pages.flatMap(
			(text) =>
				text.match(/^ *Prepare for.*$/m)?.[0].match(/(Mon|Tue|Wed|Thu|Fri|Sat|Sun) /g) ?? [],
		);
		expect(days).toHaveLength(366);
		expectWholePaper({ ...paper, pages: paper.pages.slice(0, 1) }, "the first week");
		expect(paper.pages.at(-1)).toContain("Mon 28 Feb 2028 to Tue 29 Feb 2028");
		await closeClean(workbook);
	});

	test("a plan of a week has nothing to turn", async () => {
		const workbook = await opened(7);
		await expect.poll(() => head(workbook), SOON).toHaveLength(9);
		await expect
			.poll(() => workbook.page.getByRole("button", { name: "Next week" }).count())
			.toBe(0);
		await closeClean(workbook);
	});
});
