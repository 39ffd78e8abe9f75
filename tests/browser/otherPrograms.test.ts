import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { browser, served as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

const root = join(import.meta.dirname, "../..");

/** Drops files on the page, as from a folder window. */
async function drop(
	workbook: WorkbookPage,
	files: Readonly<Record<string, string | Uint8Array>>,
): Promise<void> {
	const given = Object.entries(files).map(([name, contents]) => [
		name,
		[...Buffer.from(contents as Uint8Array)],
	]);
	await workbook.page.evaluate((all) => {
		const dataTransfer = new DataTransfer();
		for (const [name, bytes] of all as [string, number[]][])
			dataTransfer.items.add(new File([new Uint8Array(bytes)], name));
		document.body.dispatchEvent(
			new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
		);
	}, given);
}

/** So many days from the first of January 2026, as a spreadsheet in Kenya copies them. */
function register(days: number): string {
	const lines = Array.from({ length: days }, (_, at) => {
		const [year, month, day] = new Date(Date.UTC(2026, 0, 1 + at))
			.toISOString()
			.slice(0, 10)
			.split("-");
		return `${day}/${month}/${year}\t${5 + (at % 4)}\t${at % 3 === 0 ? 1 : 0}`;
	});
	return `${lines.join("\n")}\n`;
}

/** The row to go on in, at the foot of the sheet. */
async function toTheEnd(workbook: WorkbookPage): Promise<void> {
	await workbook.click(0, 0);
	await workbook.page.keyboard.press("Control+End");
	await workbook.page.keyboard.press("Home");
}

describe("what other programs give", { timeout: 60_000 }, () => {
	test("a year's register from a spreadsheet goes in with one paste and one step of undo", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "records.csv");
		const before = await workbook.table();
		await toTheEnd(workbook);
		await workbook.paste(register(371));
		await expect.poll(async () => (await workbook.table()).length).toBe(before.length + 371);
		const rows = await workbook.table();
		expect(rows[57]).toEqual(expect.arrayContaining(["2026-01-01", "5", "1"]));
		expect(rows[57 + 370]).toEqual(expect.arrayContaining(["2027-01-06"]));
		await expect
			.poll(() => workbook.page.locator("#told").textContent())
			.toContain("371 numbers and dates");
		await workbook.page.keyboard.press("Control+z");
		await expect.poll(() => workbook.table()).toEqual(before);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("days that can be read two ways are asked once; left unanswered, nothing is pasted", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "records.csv");
		const before = await workbook.table();
		const few = register(12).split("\n").slice(1, 7).join("\n");
		await toTheEnd(workbook);
		await workbook.paste(few);
		const asked = workbook.page.getByRole("dialog", { name: "Which day is 02/01/2026?" });
		await asked.waitFor();
		await expect.poll(() => asked.textContent()).toContain("line 58");
		await workbook.page.keyboard.press("Escape");
		await workbook.page.locator("#told p", { hasText: "Nothing was pasted." }).waitFor();
		await expect.poll(() => workbook.table()).toEqual(before);

		// The focus is back in the cell.
		await workbook.paste(few);
		await asked.getByRole("button", { name: "2 Jan 2026" }).click();
		await expect.poll(async () => (await workbook.table())[57]?.[0]).toBe("2026-01-02");
		await workbook.close();
	});

	test("last week goes in by its numbers: the empty row waits with the first day not entered", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "records.csv");
		const before = (await workbook.table()).length;
		await workbook.page.getByRole("button", { name: "Go on with the next day" }).click();
		for (const births of ["5", "6", "4"]) {
			await workbook.page.keyboard.type(births);
			await workbook.page.keyboard.press("Enter");
		}
		const added = (await workbook.table()).slice(before - 1).map((cells) => cells.slice(0, 2));
		expect(added).toEqual([
			["2027-03-01", "5"],
			["2027-03-02", "6"],
			["2027-03-03", "4"],
			["2027-03-04", ""],
		]);
		await workbook.close();
	});

	test("a date field says its day in the page's words, however the computer writes dates", async () => {
		const workbook = await WorkbookPage.open(browser, site, { locale: "en-US" }, "stock.csv");
		const expires = workbook.page.getByLabel("Expires on");
		await workbook.page.locator("input[name=store-kind][value=receipt]").check();
		await workbook.page
			.getByLabel("Lot", { exact: true })
			.selectOption({ label: "A lot that is not in the list" });
		await expires.fill("2027-03-02");
		await workbook.page
			.locator("output[for=store-expires]", { hasText: "Tue 2 Mar 2027" })
			.waitFor();
		await workbook.close();
	});

	test("a register whose rows cannot be read is not called empty", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "records.csv");
		await drop(workbook, { "records.csv": "date,births,kits_used\nMonday,5,1\nTuesday,6,0\n" });
		await expect.poll(() => workbook.headline()).toBe("2 rows could not be read");
		await workbook.close();
	});

	test("a sheet saved for spreadsheets begins with the mark by which they know its letters", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "kits.csv");
		const saved = async (name: string) => {
			const download = workbook.page.waitForEvent("download");
			await workbook.page.getByRole("button", { name }).click();
			return readFileSync(await (await download).path(), "utf8");
		};
		const plain = await saved("Save this sheet (CSV)");
		expect(plain).toMatch(/^kit,/);
		expect(await saved("Save for spreadsheets (CSV)")).toBe(`\ufeff${plain}`);
		await workbook.close();
	});

	test("a number with two meanings is asked for all files together", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "lots.csv");
		const lots = `item,lot,quantity,made_on,received_on,arrives_on,expires_on\nLiquid soap,S-1,"1.400",,2027-02-20,,\nWhite vinegar,V-1,"2.500",,2027-02-20,,\n`;
		await drop(workbook, { "lots.csv": lots });
		const asked = workbook.page.getByRole("dialog", { name: "Is 1.400 more or less than 3?" });
		await asked.getByRole("button", { name: "more: 1400" }).click();
		await expect
			.poll(async () => (await workbook.table()).slice(1, 3).map((cells) => cells[2]))
			.toEqual(["1400", "2500"]);
		await workbook.close();
	});

	test("of two files that say they are the same sheet a person chooses one", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "births.csv");
		await drop(workbook, {
			"births.csv": "date,births,note\n2027-03-01,7,\n",
			"births (1).csv": "date,births,note\n2027-03-01,9,\n",
		});
		await workbook.page.getByRole("button", { name: "births (1).csv" }).click();
		await expect.poll(async () => (await workbook.table())[1]?.[1]).toBe("9");
		await workbook.close();
	});

	test.each(["sample.xlsx", "sample.ods"])("a whole workbook as %s", async (name) => {
		const workbook = await WorkbookPage.open(browser, site);
		const before = await workbook.table();
		await workbook.type(0, 2, "40");
		await drop(workbook, { [name]: readFileSync(join(root, "tests/io/locales", name)) });
		await workbook.page.getByRole("button", { name: "Open it in place of this one" }).click();
		await workbook.page.locator("#told p", { hasText: "opened" }).waitFor();
		await expect.poll(() => workbook.table()).toEqual(before);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});
