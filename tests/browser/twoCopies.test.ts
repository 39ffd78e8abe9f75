import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { browser, onStick, served } from "./fixture.ts";
import { answer, answerFilePickers } from "./pagesDisk.ts";
import { savedFolder } from "./savedFolder.ts";
import { WorkbookPage } from "./workbookPage.ts";

const folder = savedFolder();
const patient = { timeout: 10_000 };
const button = (workbook: WorkbookPage, name: string) =>
	workbook.page.getByRole("button", { name, exact: true });

async function save(workbook: WorkbookPage, name: string): Promise<string> {
	const download = workbook.page.waitForEvent("download");
	await workbook.page.locator("#save-workbook").click();
	await (await download).saveAs(join(folder, name));
	return name;
}

async function drop(workbook: WorkbookPage, name: string, bytes: Uint8Array): Promise<void> {
	await workbook.page.evaluate(
		([file, content]) => {
			const dataTransfer = new DataTransfer();
			dataTransfer.items.add(new File([new Uint8Array(content)], file));
			const event = new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true });
			document.body.dispatchEvent(event);
		},
		[name, [...bytes]] as [string, number[]],
	);
}
const dropSaved = (workbook: WorkbookPage, name: string) =>
	drop(workbook, name, readFileSync(join(folder, name)));

/** Types into the first rows of the births expected, and waits until it stands there. */
async function type(workbook: WorkbookPage, row: number, note: string): Promise<void> {
	await workbook.type(row, 2, note);
	await expect.poll(async () => (await workbook.table())[row + 1]?.[2], patient).toBe(note);
}

test("two copies of two people, in browsers of their own, come together; undo takes it back in one step", {
	timeout: 120_000,
}, async () => {
	const ward = await WorkbookPage.open(browser, served, {}, "births.csv");
	await type(ward, 0, "from the start");
	const start = await save(ward, "start.zip");
	const store = await WorkbookPage.open(browser, served, {}, "births.csv");
	await dropSaved(store, start);
	await store.page.locator("#told", { hasText: "opened" }).waitFor();
	await type(store, 1, "said by the store");
	await type(store, 2, "two trucks");
	const theirs = await save(store, "store.zip");
	await type(ward, 1, "said by the ward");
	await type(ward, 3, "a market day");
	const before = await ward.table();

	await dropSaved(ward, theirs);
	await ward.page.getByRole("dialog", { name: "Open another workbook?" }).waitFor();
	await button(ward, "Bring both together").click();
	await ward.page.locator("fieldset.conflict").waitFor();
	await expect
		.poll(() => ward.page.locator(".two-copies").textContent())
		.toContain("as it was saved");
	await expect.poll(() => ward.page.locator("fieldset.conflict").count()).toBe(1);
	expect(await axeViolations(ward)).toEqual([]);
	await button(ward, "Bring both together").click();
	await ward.page.getByRole("status").filter({ hasText: "still to be chosen" }).waitFor();
	await expect.poll(() => ward.page.locator("fieldset.conflict input:focus").count()).toBe(1);
	await ward.page.getByRole("radio", { name: /The other copy.*said by the store/s }).check();
	await button(ward, "Bring both together").click();
	await ward.page.locator("#told", { hasText: "one workbook now" }).waitFor();

	await ward.goTo("births.csv");
	const notes = async () => (await ward.table()).slice(1, 5).map((cells) => cells[2]);
	await expect
		.poll(notes, patient)
		.toEqual(["from the start", "said by the store", "two trucks", "a market day"]);
	await ward.page.locator("#undo").click();
	await expect.poll(() => ward.table(), patient).toEqual(before);
	await ward.page.locator("#redo").click();
	await expect.poll(async () => (await notes())[2], patient).toBe("two trucks");

	// The store opens the file of both: it goes on from hers, so nothing is at stake.
	const both = await save(ward, "both.zip");
	await store.goTo("two-copies");
	await dropSaved(store, both);
	await store.page.locator(".from-where").waitFor();
	await expect.poll(() => store.page.locator("fieldset.conflict").count()).toBe(0);
	await button(store, "Bring both together").click();
	await store.goTo("births.csv");
	await expect.poll(async () => (await store.table())[4]?.[2], patient).toBe("a market day");
	for (const each of [ward, store]) {
		expect(each.errors).toEqual([]);
		await each.close();
	}
});

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("files beside the workbook, %s", { timeout: 60_000 }, (_, site) => {
	const open = (sheet: string) => WorkbookPage.open(browser, site, {}, sheet);

	test("a second download of the journal is the journal; before it takes lines away it asks", async () => {
		const workbook = await open("uses.csv");
		const lines = (await workbook.table()).length;
		await workbook.type(lines - 2, 0, "2027-03-01 10:00");
		await expect.poll(async () => (await workbook.table()).length, patient).toBe(lines + 1);
		await drop(
			workbook,
			"uses (1).csv",
			new TextEncoder().encode("at,kit,what,by,note\n2027-03-01 11:00,K2,opened,Esi,\n"),
		);
		const dialog = workbook.page.getByRole("dialog", { name: "Replace these sheets?" });
		await dialog.waitFor();
		await expect.poll(() => dialog.textContent()).toContain("Kits used");
		await button(workbook, "Open nothing").click();
		await workbook.page.locator("#told", { hasText: "Nothing was opened" }).waitFor();
		expect((await workbook.table()).length).toBe(lines + 1);
		await drop(
			workbook,
			"uses (1).csv",
			new TextEncoder().encode("at,kit,what,by,note\n2027-03-01 11:00,K2,opened,Esi,\n"),
		);
		await button(workbook, "Bring both together").click();
		await workbook.page.locator(".from-where").waitFor();
		await button(workbook, "Bring both together").click();
		await workbook.page.locator("#told", { hasText: "one workbook now" }).waitFor();
		await workbook.goTo("uses.csv");
		await expect.poll(async () => (await workbook.table()).length, patient).toBe(lines + 2);
		expect(await workbook.row("2027-03-01 11:00")).toContain("Esi");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("a damaged copy is said to be so, and nothing changes", async () => {
		const workbook = await open("two-copies");
		await drop(workbook, "copy.zip", new TextEncoder().encode("PK\u0003\u0004 not a whole zip"));
		await workbook.page.getByRole("heading", { name: /cannot be brought together/ }).waitFor();
		expect(await workbook.page.locator("#undo").isDisabled()).toBe(true);
		await button(workbook, "Leave them apart").click();
		await workbook.page
			.locator(".two-copies")
			.filter({ hasText: /^$/ })
			.waitFor({ state: "attached" });
		await workbook.close();
	});
});

test("two windows that save into one file: the second brings both together, and then saves", {
	timeout: 60_000,
}, async () => {
	const first = await WorkbookPage.open(browser, served, {}, "births.csv", answerFilePickers);
	const saves = async (page: Page) => {
		await page.locator("#save-workbook").click();
		await page.locator("#kept", { hasText: /^Saved in / }).waitFor();
	};
	await answer(first.page, "ours.zip");
	await type(first, 0, "from the start");
	await saves(first.page);
	const page = await first.context.newPage();
	await page.goto(`${served.address}index.html#births.csv`);
	await answer(page, "ours.zip");
	await page.getByRole("button", { name: "Start from the demo" }).click();
	await page.locator("#open-files").click();
	await page.locator("#told", { hasText: "was opened" }).waitFor();
	const cell = (row: number) =>
		page.locator(`.grid .ht_master tbody tr:nth-child(${row}) td`).nth(2);
	await cell(2).click();
	await page.keyboard.type("second window");
	await page.keyboard.press("Enter");
	await saves(page);

	await type(first, 2, "first window");
	await first.page.locator("#save-workbook").click();
	const dialog = first.page.getByRole("dialog", { name: "The workbook is not saved" });
	await dialog.getByRole("button", { name: "Bring both together" }).click();
	await first.page.locator(".from-where").waitFor();
	await button(first, "Bring both together").click();
	await first.page.locator("#told", { hasText: "one workbook now" }).waitFor();
	await saves(first.page);
	await first.goTo("births.csv");
	const notes = async () => (await first.table()).slice(1, 4).map((cells) => cells[2]);
	await expect.poll(notes, patient).toEqual(["from the start", "second window", "first window"]);
	expect(first.errors).toEqual([]);
	await first.close();
});
