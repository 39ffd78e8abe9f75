import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stickFiles } from "../../src/build/stick/stickFiles.ts";
import { zipFiles } from "../../src/io/zipFiles.ts";
import { browser } from "./fixture.ts";
import { builtSite } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const sample = join(import.meta.dirname, "../../sample-csv");

describe("the zip for a memory stick, unpacked", { timeout: 60_000 }, () => {
	let stick: string;
	beforeAll(async () => {
		stick = mkdtempSync(join(tmpdir(), "clé USB – maternité 産科 #1 100% "));
		const parts = { site: builtSite(), workbook: sample, version: "0.1.0" };
		unpack(zipFiles(await stickFiles(parts)), stick);
	});
	afterAll(() => rmSync(stick, { recursive: true }));

	function unpack(zip: Uint8Array, folder: string): void {
		for (const [path, content] of Object.entries(unzipSync(zip))) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			writeFileSync(join(folder, path), content);
		}
	}

	/** Double-clicks the one file, in a browser without a network. */
	async function opened(): Promise<WorkbookPage> {
		const program = { address: `${pathToFileURL(stick).href}/program/`, close: () => undefined };
		const workbook = await WorkbookPage.open(browser, program, { offline: true });
		await workbook.page.goto("about:blank");
		await workbook.page.goto(pathToFileURL(join(stick, "Open Basinbook.html")).href);
		await workbook.page.getByRole("button", { name: "Look at the demo" }).click();
		await workbook.goTo("this-week");
		return workbook;
	}

	test("opens with its one file, takes an entry, saves, and opens the workbook that lies beside it", async () => {
		const workbook = await opened();
		const { page } = workbook;
		await workbook.type(0, 2, "11");
		expect((await workbook.table())[1]?.[2]).toBe("11");
		const download = page.waitForEvent("download");
		await page.getByRole("button", { name: "Save workbook" }).click();
		const saved = await (await download).path();
		const births = Object.entries(unzipSync(readFileSync(saved))).find(([n]) => n === "births.csv");
		expect(new TextDecoder().decode(births?.[1])).toContain("11");
		const chooser = page.waitForEvent("filechooser");
		await page.locator("#open-files").click();
		await (await chooser).setFiles(join(stick, "demo workbook.zip"));
		await page.locator("#told", { hasText: "opened" }).waitFor();
		await expect.poll(async () => (await workbook.table())[1]?.[2]).not.toBe("11");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("leads from the workbook to its other pages and back", async () => {
		const workbook = await opened();
		const { page } = workbook;
		for (const link of ["Guide to the sheets", "Methods", "Sources"]) {
			await page.locator(".foot a", { hasText: link }).click();
			await page.locator(".foot a", { hasText: "Workbook" }).click();
			await page.locator("#sheet h1").waitFor();
		}
		await page.locator(".foot a", { hasText: "Licences" }).click();
		await expect.poll(() => page.locator("body").textContent()).toContain("handsontable 6.2.2");
		await workbook.close();
	});

	test("taken out of its folder, the file stays open and says what to do", async () => {
		const alone = mkdtempSync(join(tmpdir(), "basinbook alone "));
		writeFileSync(
			join(alone, "Open Basinbook.html"),
			readFileSync(join(stick, "Open Basinbook.html")),
		);
		const page = await browser.newPage();
		await page.goto(pathToFileURL(join(alone, "Open Basinbook.html")).href);
		await page.waitForLoadState("load");
		await expect.poll(() => page.locator("main").textContent()).toContain("Take the whole folder");
		await page.close();
		rmSync(alone, { recursive: true });
	});
});
