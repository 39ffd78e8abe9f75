import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { cellOf, expectSaving, patient, type } from "./draftPage.ts";
import { browser, onStick, served } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

const cannotKeep = (page: Page) =>
	page.locator("#kept.trouble", { hasText: "cannot keep a draft" }).waitFor();

/** Spoils a sheet, or everything, in all drafts that the browser holds. */
async function damage(page: Page, what: string): Promise<void> {
	await page.evaluate(async (file) => {
		const database = await new Promise<IDBDatabase>((ready) => {
			const request = indexedDB.open("basinbook");
			request.onsuccess = () => ready(request.result);
		});
		const store = database.transaction("workbooks", "readwrite").objectStore("workbooks");
		await new Promise<void>((done) => {
			store.transaction.oncomplete = () => done();
			store.openCursor().onsuccess = (event) => {
				const cursor = (event.target as IDBRequest<IDBCursorWithValue | null>).result;
				if (!cursor) return;
				const draft = cursor.value as { tables: Record<string, unknown> };
				draft.tables[file] = { header: ["kit"], rows: 7 };
				cursor.update(file === "everything" ? "not a workbook" : draft);
				cursor.continue();
			};
		});
		database.close();
	}, what);
}

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("drafts that cannot be kept or read, %s", { timeout: 120_000 }, (_, site) => {
	test("a browser that keeps nothing for the page says so, and the workbook can still be saved", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "births.csv", async (context) => {
			await context.addInitScript(() => {
				for (const name of ["indexedDB", "localStorage"])
					Object.defineProperty(globalThis, name, {
						get() {
							throw new DOMException("blocked", "SecurityError");
						},
					});
				Reflect.deleteProperty(globalThis, "showSaveFilePicker");
			});
		});
		await workbook.type(0, 2, "11");
		await cannotKeep(workbook.page);
		await expectSaving(workbook.page);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	const open = () => WorkbookPage.open(browser, site, {}, "births.csv");

	test("a damaged draft is said to be damaged, and what can be read of one is opened", async () => {
		const workbook = await open();
		const { page } = workbook;
		await type(page, 0, "kept");
		await damage(page, "kits.csv");
		await page.reload();
		await page.getByRole("button", { name: "Go on with the draft" }).click();
		await page
			.locator("#told", { hasText: "were damaged and could not be opened: Kits" })
			.waitFor();
		expect(await cellOf(page, 0, 2)).toBe("kept");
		await damage(page, "everything");
		await page.reload();
		await page.getByRole("button", { name: "Go on with the draft" }).click();
		await page.locator("#draft-trouble", { hasText: "damaged and cannot be opened" }).waitFor();
		await page.getByRole("button", { name: "Start from the demo" }).click();
		await page.locator("#opening").waitFor({ state: "hidden" });
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});

test("storage that is full is said, and the workbook can still be saved", async () => {
	const workbook = await WorkbookPage.open(browser, served, {}, "births.csv");
	const { page, context } = workbook;
	const origin = new URL(served.address).origin;
	const tools = await context.newCDPSession(page);
	await tools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1000 });
	await workbook.type(0, 2, "11");
	await page.locator("#kept.trouble", { hasText: "no room left in this browser" }).waitFor();
	await expectSaving(page);
	await expect.poll(() => page.locator("#kept").textContent()).toContain("cannot keep a draft");
	await tools.send("Storage.overrideQuotaForOrigin", { origin });
	await type(page, 1, "12");
	await expect.poll(() => page.locator("#kept").textContent(), patient).toContain("Draft kept");
	expect(workbook.errors).toEqual([]);
	await workbook.close();
}, 120_000);

test("a draft that takes long to come to the disk is said to be on its way, until it is there", async () => {
	const workbook = await WorkbookPage.open(browser, served, {}, "births.csv");
	const { page } = workbook;
	await page.evaluate(() => {
		const { prototype } = IDBObjectStore;
		const put = prototype.put;
		const wait = (store: IDBObjectStore) => {
			if (document.title !== "go on") store.get("nothing").onsuccess = () => wait(store);
		};
		IDBTransaction.prototype.commit = () => undefined;
		prototype.put = function (...given) {
			wait(this);
			return put.apply(this, given);
		};
	});
	const writing = page.locator("#kept[data-keeping]");
	const told = page.locator("#kept.trouble", { hasText: "still being written" });
	await workbook.type(0, 2, "11");
	await writing.waitFor();
	expect(await told.count()).toBe(0);
	await told.waitFor();
	await page.evaluate(() => {
		document.title = "go on";
	});
	await writing.waitFor({ state: "detached" });
	await expect.poll(() => page.locator("#kept").textContent()).toContain("Draft kept");
	expect(workbook.errors).toEqual([]);
	await workbook.close();
}, 60_000);
