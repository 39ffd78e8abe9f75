import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { cellOf, patient, type } from "./draftPage.ts";
import { browser, onStick, served } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("drafts, %s", { timeout: 120_000 }, (_, site) => {
	const open = () => WorkbookPage.open(browser, site, {}, "births.csv");

	/** Another window of the same browser, with the drafts that it is offered. */
	async function window(context: BrowserContext): Promise<{ page: Page; offered: string[] }> {
		const page = await context.newPage();
		await page.goto(`${site.address}index.html#births.csv`);
		await page.locator("#opening h2").waitFor();
		return { page, offered: await page.locator("#opening button").allTextContents() };
	}

	test("two windows that go on with one draft keep a draft each, and are told of each other", async () => {
		const first = await open();
		await type(first.page, 0, "both");
		const second = (await window(first.context)).page;
		await second.getByRole("button", { name: "Go on with the draft" }).click();
		await second.locator("#told", { hasText: "open in another window too" }).waitFor();
		await type(second, 1, "second");
		await type(first.page, 1, "first");
		// The copy of a tab has the same session storage, and must not write as the first one.
		const [copy] = await Promise.all([
			first.context.waitForEvent("page"),
			first.page.evaluate(() => void globalThis.open(location.href)),
		]);
		await copy.getByRole("button", { name: "Go on with the draft" }).click();
		await type(copy, 2, "copy");
		await type(first.page, 3, "first again");
		const { page, offered } = await window(first.context);
		expect(offered.filter((words) => words.includes("open in another window"))).toHaveLength(2);
		const found: (string | null)[][] = [];
		for (const at of [0, 1, 2]) {
			await page.locator(".start summary").evaluate((summary) => {
				(summary.parentElement as HTMLDetailsElement).open = true;
			});
			if (at > 0) await page.locator("#earlier-drafts").click();
			else await page.keyboard.press("Escape");
			if (at > 0) await page.locator(".drafts button").nth(at).click();
			await page.locator("#opening").waitFor({ state: "hidden" });
			found.push(await Promise.all([0, 1, 2, 3].map((row) => cellOf(page, row, 2))));
		}
		expect(found.map((cells) => cells.slice(0, 2).concat(cells[3] ?? ""))).toEqual([
			["both", "first", "first again"],
			["both", "first", ""],
			["both", "second", ""],
		]);
		await first.close();
	});

	test("a page that is put aside before it has painted an edit keeps it at once", async () => {
		const workbook = await open();
		const { page, context } = workbook;
		await page.locator(".grid .ht_master tbody tr:first-child td").nth(2).click();
		// A hidden page is given no frames.
		await page.evaluate(() => {
			globalThis.requestAnimationFrame = () => 0;
		});
		await page.keyboard.type("aside");
		await page.keyboard.press("Enter");
		await page.evaluate(() => {
			Object.defineProperty(document, "visibilityState", { value: "hidden" });
			document.dispatchEvent(new Event("visibilitychange"));
		});
		const other = (await window(context)).page;
		await other.getByRole("button", { name: "Go on with the draft" }).click();
		await expect.poll(() => cellOf(other, 0, 2), patient).toBe("aside");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("earlier drafts can be gone back to at any time, and Undo leaves them again", async () => {
		const workbook = await open();
		const { page } = workbook;
		await page.locator(".start summary").click();
		await page.locator("#earlier-drafts").click();
		await page.locator("#opening", { hasText: "No earlier draft" }).waitFor();
		await page.getByRole("button", { name: "Close" }).click();
		await type(page, 0, "earlier");
		await page.reload();
		await page.getByRole("button", { name: "Start from the demo" }).click();
		expect(await cellOf(page, 0, 2)).toBe("");
		await page.locator(".start summary").click();
		await page.locator("#earlier-drafts").click();
		await page.locator(".drafts button").first().click();
		await expect.poll(() => cellOf(page, 0, 2), patient).toBe("earlier");
		await expect.poll(() => page.locator("#kept").textContent()).toContain("not yet saved");
		await page.getByRole("button", { name: "Undo" }).click();
		await expect.poll(() => cellOf(page, 0, 2), patient).toBe("");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("of many drafts the last twelve are kept", async () => {
		const workbook = await open();
		const { page } = workbook;
		await page.evaluate(async () => {
			const database = await new Promise<IDBDatabase>((ready) => {
				const request = indexedDB.open("basinbook");
				request.onsuccess = () => ready(request.result);
			});
			const transaction = database.transaction(["heads", "workbooks"], "readwrite");
			for (let hour = 10; hour < 24; hour++) {
				const id = `draft ${hour}`;
				const keptAt = `2026-01-01T${hour}:00:00.000Z`;
				transaction.objectStore("heads").put({ id, unit: id, keptAt }, id);
				transaction.objectStore("workbooks").put({ tables: {} }, id);
			}
			await new Promise<void>((done) => {
				transaction.oncomplete = () => done();
			});
			database.close();
		});
		await page.reload();
		await page.locator("#opening", { hasText: "A draft of draft 23" }).waitFor();
		const offered = await page.locator(".drafts button").allTextContents();
		expect(offered).toHaveLength(11);
		expect(offered[10]).toContain("draft 12");
		await workbook.close();
	});

	test("a draft that an earlier edition kept elsewhere is offered, once", async () => {
		const workbook = await open();
		const { page } = workbook;
		await page.evaluate(() => {
			const tables = {
				"unit.csv": { header: ["key", "value"], rows: [["unit_name", "Old Mill"]] },
				"births.csv": { header: ["date", "births", "note"], rows: [["2027-03-01", "6", "old"]] },
			};
			const draft = { workbook: { tables }, keptAt: "2026-01-02T03:04:05.000Z" };
			localStorage.setItem("basinbook-draft-1", JSON.stringify(draft));
			localStorage.setItem("basinbook-draft-2", '{"workbook":7');
		});
		await page.reload();
		await page.locator("#opening", { hasText: "Old Mill" }).waitFor();
		await page.getByRole("button", { name: "Go on with the draft" }).click();
		await expect.poll(() => cellOf(page, 0, 2), patient).toBe("old");
		await page.reload();
		await page.locator("#opening", { hasText: "Old Mill" }).waitFor();
		await expect.poll(() => page.locator(".drafts button").count()).toBe(0);
		await workbook.close();
	});
});
