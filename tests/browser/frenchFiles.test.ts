import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { demoWordsOf } from "../../src/messages/demo/demoWordsOf.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick, served } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** Columns of computed sheets that are written for reading; all others are the same in every language. */
const WORDS = [
	"costs.csv: what",
	"forecast.csv: taken_from",
	"how-safe.csv: lever",
	"how-safe.csv: unit",
	"kit-register.csv: reason",
	"levers.csv: change",
	"order.csv: remark",
	"product-compare.csv: period",
	"run-sheet.csv: only_if",
	"run-sheet.csv: step",
	"scorecard.csv: remark",
	"scorecard.csv: way",
	"stock.csv: remark",
	"strength.csv: remark",
	"tonight.csv: for_round",
	"tonight.csv: task",
	"week-total.csv: unit",
];

/** Names of the demo in English, and in French. */
const names = new Map(Object.values(demoWordsOf("fr")).flatMap((texts) => Object.entries(texts)));

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("what is saved in French, %s", { timeout: 180_000 }, (_, site) => {
	const open = (sheet?: string, options = {}) =>
		WorkbookPage.open(browser, { ...site, address: `${site.address}fr/` }, options, sheet);

	test("a choice is read in French and kept as the word of the file", async () => {
		const workbook = await open("kits.csv");
		const { page } = workbook;
		expect((await workbook.row("K1"))[2]).toBe("en service");
		await workbook.type(0, 2, "Hors service");
		await expect.poll(async () => (await workbook.row("K1"))[2]).toBe("hors service");
		await expect.poll(() => page.locator(".problem-list.error").count()).toBe(0);
		await workbook.click(1, 2);
		await page.getByRole("button", { name: "À propos de cette cellule" }).click();
		await expect
			.poll(() => page.locator("#entry-field option").allTextContents())
			.toEqual(["", "en service", "hors service"]);
		await page.locator("#entry-field").selectOption({ label: "hors service" });
		await expect.poll(async () => (await workbook.row("K2"))[2]).toBe("hors service");
		const saved = await savedFiles(workbook);
		expect(saved["kits.csv"]).toMatch(/^K1,[^,]+,out_of_service,/m);
		expect(saved["kits.csv"]).toMatch(/^K2,[^,]+,out_of_service,/m);
		await closeClean(workbook);
	});

	test("what is saved has the same keys, codes and numbers as in English", async () => {
		const [english, french] = [await WorkbookPage.open(browser, site), await open()];
		const [inEnglish, inFrench] = [await savedFiles(english), await savedFiles(french)];
		for (const { file } of typedSheets)
			expect(cells(inFrench[file]), file).toEqual(
				cells(inEnglish[file]).map((row) => row.map((cell) => names.get(cell) ?? cell)),
			);
		const different = new Set<string>();
		for (const { file } of computedSheets) {
			const [one, other] = [cells(inEnglish[file]), cells(inFrench[file])];
			expect(other[0]).toEqual(one[0]);
			expect(other).toHaveLength(one.length);
			one.forEach((row, at) => {
				row.forEach((cell, column) => {
					if ((names.get(cell) ?? cell) !== other[at]?.[column])
						different.add(`${file}: ${one[0]?.[column]}`);
				});
			});
		}
		expect([...different].sort()).toEqual(WORDS);
		await Promise.all([closeClean(english), closeClean(french)]);
	});
});

async function savedFiles({ page }: WorkbookPage): Promise<Record<string, string>> {
	const download = page.waitForEvent("download");
	await page.locator("#save-workbook").click();
	const bytes = readFileSync(await (await download).path());
	const entries = Object.entries(unzipSync(new Uint8Array(bytes)));
	return Object.fromEntries(
		entries.map(([name, content]) => [name.replace(/^.*\//, ""), strFromU8(content)]),
	);
}

function cells(csv = ""): string[][] {
	return Papa.parse<string[]>(csv.trim()).data;
}
