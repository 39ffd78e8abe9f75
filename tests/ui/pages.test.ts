import { expect, test } from "vitest";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { sheetOf } from "../../src/core/sheets/sheetOf.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { firstPage, pageOf, pages, planPage } from "../../src/ui/pages.ts";
import { routedPage } from "../../src/ui/shell/routedPage.ts";

test("every sheet has a page, and every page stands under one question", () => {
	const files = pages.map(({ file }) => file);
	expect(new Set(files).size).toBe(files.length);
	for (const { file } of [...typedSheets, ...computedSheets]) expect(files).toContain(file);
});

test.each(pages.map((page) => [page.file, page] as const))(
	"%s has what stands on it: of its own sheet, or of its own making",
	async (file, page) => {
		const on = await page.load();
		if ("mount" in on || page === planPage) expect(sheetOf(file)).toBeUndefined();
		else expect(on).toHaveProperty("sheet", sheetOf(file));
	},
);

test("where chlorine, boiling water, a kit's readiness or the store is at stake, cautions stand on the page", async () => {
	const acts =
		/^(tonight|run-sheet|mixing|mixing-days|wall-table|ward-use|boiling|order|placed|stock|lots|journal|kit-register|checks)\.csv$/;
	for (const { file, load } of pages.filter((page) => sheetOf(page.file))) {
		const on = await load();
		const count = "mount" in on ? 0 : (on.cautions ?? []).length;
		if (acts.test(file)) expect(count, file).toBeGreaterThan(0);
		else expect(count, file).toBe(0);
	}
});

test("without an address today stands there; one without a page leads to the plan", () => {
	expect(routedPage("#births.csv")).toBe(pageOf("births.csv"));
	expect(routedPage("#labels")).toBe(pageOf("labels"));
	expect(routedPage("#nothing.csv")).toBe(planPage);
	expect(routedPage("")).toBe(firstPage);
	expect(routedPage("#today")).toBe(firstPage);
});
