import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { planCommand } from "../../src/cli/planCommand.ts";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { terminal } from "../io/terminal.ts";
import { browser, onStick as site } from "./fixture.ts";
import { savedFolder } from "./savedFolder.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe("files, in and out", { timeout: 60_000 }, () => {
	const folder = savedFolder();

	async function savedWorkbook(workbook: WorkbookPage): Promise<Record<string, string>> {
		const download = workbook.page.waitForEvent("download");
		await workbook.page.locator("#save-workbook").click();
		const bytes = readFileSync(await (await download).path());
		const entries = Object.entries(unzipSync(new Uint8Array(bytes)));
		return Object.fromEntries(
			entries.map(([name, content]) => [name.replace(/^.*\//, ""), strFromU8(content)]),
		);
	}

	test("the saved zip holds the numbers that the plan command writes for the same workbook", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.type(0, 3, "12.5");
		const saved = await savedWorkbook(workbook);
		const input = mkdtempSync(join(folder, "in "));
		const output = mkdtempSync(join(folder, "out "));
		for (const { file } of typedSheets)
			if (saved[file] !== undefined) writeFileSync(join(input, file), saved[file]);
		const command = await terminal(planCommand, [input, "--out", output]);
		// The demo's own advice on two kits that are not counted and seven lots counted long ago, and nothing else.
		expect(command.stderr.trim().split("\n")).toEqual([
			...[6, 7].map((line) => expect.stringMatching(`^Advice, kits.csv line ${line}, kit: `)),
			...[2, 10, 11, 13, 15, 16, 19].map((line) =>
				expect.stringMatching(`^Advice, lots.csv line ${line}, quantity: .*last counted on`),
			),
		]);
		expect(command.status).toBe(0);
		for (const { file } of computedSheets)
			expect(saved[file], file).toBe(readFileSync(join(output, file), "utf8"));
		expect(saved["births.csv"]).toContain("12.5");
		await workbook.close();
	});

	test("a saved workbook opens again through the file picker as it was", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.type(0, 2, "9.5");
		const table = await workbook.table();
		const download = workbook.page.waitForEvent("download");
		await workbook.page.locator("#save-workbook").click();
		const path = join(folder, "saved.zip");
		await (await download).saveAs(path);
		await workbook.page.locator(".start summary").click();
		await workbook.page.locator("#start-empty").click();
		await expect.poll(() => workbook.headline()).toContain("still missing");
		const chooser = workbook.page.waitForEvent("filechooser");
		await workbook.page.locator("#open-files").click();
		await (await chooser).setFiles(path);
		await expect.poll(() => workbook.table()).toEqual(table);
		await workbook.close();
	});

	test("a dropped CSV replaces its own sheet and leaves the others", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "births.csv");
		await drop(workbook, "births.csv", "date;births;note\n2027-03-01;13,5;dropped\n");
		await expect
			.poll(async () => (await workbook.table())[1])
			.toEqual(["2027-03-01", "13.5", "dropped"]);
		await workbook.goTo("this-week");
		expect((await workbook.table())[1]?.[1]).toBe("13.5");
		await workbook.close();
	});

	test("a file that is no part of a workbook is named, and nothing changes", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "births.csv");
		const before = await workbook.table();
		await drop(workbook, "holiday.txt", "sun, sea");
		await workbook.page.locator("#told", { hasText: "Nothing was opened" }).waitFor();
		await expect
			.poll(() => workbook.page.locator("#trouble").textContent())
			.toContain("holiday.txt");
		await expect.poll(() => workbook.table()).toEqual(before);
		await workbook.close();
	});

	async function drop(workbook: WorkbookPage, name: string, text: string): Promise<void> {
		await workbook.page.evaluate(
			([file = "", content = ""]) => {
				const dataTransfer = new DataTransfer();
				dataTransfer.items.add(new File([content], file));
				document.body.dispatchEvent(
					new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
				);
			},
			[name, text],
		);
	}
});
