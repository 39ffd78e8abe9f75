import { strFromU8, strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { served as site } from "./fixture.ts";
import { answer, asked, fileOf, putFile, removeFile } from "./pagesDisk.ts";
import {
	births,
	choose,
	dialog,
	kept,
	open,
	patient,
	save,
	saved,
	saysSaved,
} from "./savingPage.ts";

describe("a file that is not as the page left it, or cannot be written", {
	timeout: 60_000,
}, () => {
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
});
