import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { browser, served as site } from "./fixture.ts";
import { answer, answerFilePickers, asked, fileOf, putFile, removeFile } from "./pagesDisk.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** A plan is worked out at every edit, and a test machine may be slow. */
const patient = { timeout: 10_000 };
const PROPOSED = "basinbook Willow Ford delivery unit (invented) 2027-03-01.zip";

describe("saving to a file", { timeout: 60_000 }, () => {
	const open = () => WorkbookPage.open(browser, site, {}, "births.csv", answerFilePickers);
	const save = (page: Page) => page.locator("#save-workbook").click();
	const kept = (page: Page) => page.locator("#kept").textContent();
	const title = (page: Page) => page.locator("#kept").getAttribute("title");
	async function saysSaved(page: Page, name: string): Promise<void> {
		const where = async () => (await kept(page))?.startsWith("Saved in ") && title(page);
		await expect.poll(where, patient).toBe(name);
	}
	const dialog = (page: Page) => page.getByRole("dialog", { name: "The workbook is not saved" });
	const choose = (page: Page, words: string) =>
		dialog(page).getByRole("button", { name: words }).click();
	const births = async (page: Page, name: string) =>
		strFromU8(unzipSync(await fileOf(page, name))["births.csv"] ?? new Uint8Array());

	async function saved(workbook: WorkbookPage, name: string): Promise<void> {
		await answer(workbook.page, name);
		await save(workbook.page);
		await saysSaved(workbook.page, name);
	}

	test("the first time asks, with a name to know it by; after that Save goes to the same file", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		expect(await kept(page)).toBe("Draft kept here; not yet saved to a file");
		await save(page);
		await saysSaved(page, PROPOSED);
		await workbook.type(0, 2, "two");
		expect(await kept(page)).toBe(
			"Draft kept here; not yet saved in basinbook Wi…ed) 2027-03-01.zip",
		);
		await save(page);
		await saysSaved(page, PROPOSED);
		expect(await asked(page)).toEqual([PROPOSED]);
		expect(await births(page, PROPOSED)).toContain("two");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("Save as takes another file, and Save goes there from then on", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await saved(workbook, "a.zip");
		await workbook.type(0, 2, "two");
		await answer(page, "b.zip");
		await page.locator("#save-as").click();
		await saysSaved(page, "b.zip");
		await workbook.type(0, 2, "three");
		await save(page);
		await saysSaved(page, "b.zip");
		expect(await births(page, "a.zip")).toContain("one");
		expect(await births(page, "b.zip")).toContain("three");
		await workbook.close();
	});

	test("a file that was opened is saved back to itself; a new workbook is not", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await saved(workbook, "a.zip");
		await page.reload();
		await page.getByRole("button", { name: "Start from the demo" }).click();
		await page.locator("#open-files").click();
		await page.locator("#told", { hasText: "was opened" }).waitFor();
		expect((await workbook.table())[1]?.[2]).toBe("one");
		await workbook.type(0, 2, "two");
		await save(page);
		await saysSaved(page, "a.zip");
		expect(await asked(page)).toEqual([]);
		expect(await births(page, "a.zip")).toContain("two");
		await page.locator(".start summary").click();
		await page.locator("#start-demo").click();
		await answer(page, "other.zip");
		await save(page);
		await saysSaved(page, "other.zip");
		expect(await births(page, "a.zip")).toContain("two");
		await workbook.close();
	});

	test("two windows with one file: the second to save is told, and nothing is replaced unasked", async () => {
		const first = await open();
		await first.type(0, 2, "one");
		await saved(first, "shared.zip");
		const page = await first.context.newPage();
		await page.goto(`${site.address}index.html#births.csv`);
		await page.getByRole("button", { name: "Start from the demo" }).click();
		await answer(page, "shared.zip");
		await page.locator("#open-files").click();
		await page.locator("#told", { hasText: "was opened" }).waitFor();
		await first.type(1, 2, "by the first window");
		await save(first.page);
		await saysSaved(first.page, "shared.zip");
		await page.getByRole("button", { name: "Undo" }).click();
		await page.getByRole("button", { name: "Redo" }).click();
		await save(page);
		await expect
			.poll(() => dialog(page).textContent(), patient)
			.toContain("shared.zip was changed by another window or another program");
		await choose(page, "Do not save now");
		expect(await births(page, "shared.zip")).toContain("by the first window");
		await answer(page, "mine.zip");
		await save(page);
		await choose(page, "Save as another file");
		await saysSaved(page, "mine.zip");
		expect(await births(page, "shared.zip")).toContain("by the first window");
		expect(await births(page, "mine.zip")).not.toContain("by the first window");
		await first.close();
	});

	test("a file that another program changed is replaced where the person says so, and only then", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await saved(workbook, "a.zip");
		await putFile(page, "a.zip", strToU8("someone else's"));
		await save(page);
		await dialog(page).waitFor();
		await page.keyboard.press("Escape");
		expect(strFromU8(await fileOf(page, "a.zip"))).toBe("someone else's");
		await save(page);
		await dialog(page).waitFor();
		await putFile(page, "a.zip", strToU8("changed again while the question stood there"));
		await choose(page, "Replace it");
		await dialog(page).waitFor();
		expect(strFromU8(await fileOf(page, "a.zip"))).toContain("changed again");
		await choose(page, "Replace it");
		// The page has said all the time that it is saved there: what tells is the file.
		const written = () => births(page, "a.zip").catch(() => "no workbook yet");
		await expect.poll(written, patient).toContain("one");
		await workbook.close();
	});

	test("refused, failed and gone are said in words, and saving can be tried again", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await saved(workbook, "a.zip");
		await workbook.type(0, 2, "two");
		await page.evaluate(() => {
			Object.assign(FileSystemFileHandle.prototype, { requestPermission: async () => "denied" });
		});
		await save(page);
		await expect
			.poll(() => dialog(page).textContent(), patient)
			.toContain("not allowed to write to a.zip");
		await page.evaluate(() => {
			Object.assign(FileSystemFileHandle.prototype, { requestPermission: async () => "granted" });
			const write = FileSystemWritableFileStream.prototype.write;
			FileSystemWritableFileStream.prototype.write = async () => {
				FileSystemWritableFileStream.prototype.write = write;
				throw new DOMException("The disk is full.", "QuotaExceededError");
			};
		});
		await choose(page, "Try again");
		await expect
			.poll(() => dialog(page).textContent(), patient)
			.toContain("could not be written. The browser says: The disk is full.");
		expect(await births(page, "a.zip")).toContain("one");
		await removeFile(page, "a.zip");
		await choose(page, "Try again");
		await expect
			.poll(() => dialog(page).textContent(), patient)
			.toContain("a.zip is not there any more");
		expect(await kept(page)).toContain("not yet saved in a.zip");
		await answer(page, "b.zip");
		await choose(page, "Save as another file");
		await saysSaved(page, "b.zip");
		expect(await births(page, "b.zip")).toContain("two");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("closing the browser's window saves nothing; where the browser has none for this page, Save downloads", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.type(0, 2, "one");
		await answer(page, "(closed)");
		await save(page);
		await expect.poll(() => asked(page), patient).toHaveLength(1);
		expect(await kept(page)).toBe("Draft kept here; not yet saved to a file");
		await answer(page, "(not allowed)");
		const download = page.waitForEvent("download");
		await save(page);
		const name = (await download).suggestedFilename();
		expect(name).toMatch(/^basinbook Willow Ford .* 2027-03-01 saved \d{4}-\d\d-\d\d\.zip$/);
		await expect.poll(() => kept(page), patient).toMatch(/^Downloaded as basinbook Wi….*zip$/);
		expect(await title(page)).toBe(name);
		await workbook.close();
	});

	test("a plan that moved on to other days does not take the file of the days before", async () => {
		const workbook = await open();
		const { page } = workbook;
		await saved(workbook, "first week.zip");
		await workbook.goTo("unit.csv");
		const row = (await workbook.table()).findIndex(([label]) => label === "First day of the plan");
		await workbook.type(row - 1, 1, "2027-03-08");
		await save(page);
		await expect.poll(() => dialog(page).textContent(), patient).toContain("begins on another day");
		await answer(page, undefined);
		await choose(page, "Save as another file");
		await saysSaved(page, PROPOSED.replace("03-01", "03-08"));
		await workbook.close();
	});

	test("a file of which something could not be read is not written over", async () => {
		const workbook = await open();
		const { page } = workbook;
		const unit = { "unit.csv": strToU8("key,value\nunit_name,X\n") };
		const newer = strToU8('{"basinbook_format": 99, "resources": [], "more": "of this"}');
		const files = {
			"mixed.zip": zipSync({ ...unit, "letter.txt": strToU8("keep") }),
			"newer.zip": zipSync({ ...unit, "datapackage.json": newer }),
		};
		for (const [name, bytes] of Object.entries(files)) {
			await putFile(page, name, bytes);
			await answer(page, name);
			await page.locator("#open-files").click();
			const told = `Not everything in ${name} could be read. Save will ask for another file`;
			await page.locator("#trouble", { hasText: told }).waitFor();
			await answer(page, "(closed)");
			const before = (await asked(page)).length;
			await save(page);
			await expect.poll(() => asked(page), patient).toHaveLength(before + 1);
			expect(await fileOf(page, name)).toEqual(bytes);
		}
		await workbook.close();
	});

	test("Ctrl+S keeps the text that is being typed, and saves", async () => {
		const workbook = await open();
		const { page } = workbook;
		await workbook.click(0, 2);
		await page.keyboard.type("half a word");
		await answer(page, "a.zip");
		await page.keyboard.press("Control+s");
		await saysSaved(page, "a.zip");
		expect(await births(page, "a.zip")).toContain("half a word");
		await answer(page, "b.zip");
		await page.keyboard.press("Control+Shift+S");
		await saysSaved(page, "b.zip");
		await workbook.close();
	});
});
