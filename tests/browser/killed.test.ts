import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type KillableBrowser, startKillableBrowser } from "./killableBrowser.ts";
import { answer, answerFilePickers, fileOf } from "./pagesDisk.ts";
import { type Site, servedSite, siteOnStick } from "./site.ts";

/** From this long after an edit a killed browser takes nothing with it; measured: 1 to 60 ms. */
const SURELY_KEPT_MS = 200;
/** The first is long, so that every later opening finds a draft. */
const KILLED_AFTER_MS = [1000, SURELY_KEPT_MS, 50, 0];
const NOTE = 2;
const patient = { timeout: 10_000 };

let profile: string;
let site: Site;
const started: KillableBrowser[] = [];
const begin = (start: () => Site | Promise<Site>) => async () => {
	profile = mkdtempSync(join(tmpdir(), "basinbook profile "));
	site = await start();
};
async function end(): Promise<void> {
	for (const { kill } of started.splice(0)) await kill();
	site?.close();
	rmSync(profile, { recursive: true, force: true });
}

async function opened(prepare?: (context: KillableBrowser["context"]) => Promise<void>) {
	const browser = await startKillableBrowser(profile);
	started.push(browser);
	const { context, kill } = browser;
	await prepare?.(context);
	const page = context.pages()[0] ?? (await context.newPage());
	page.setDefaultTimeout(20_000);
	await page.goto(`${site.address}index.html#births.csv`);
	await page.locator("#sheet h1").waitFor();
	return { page, kill };
}
const goOn = (page: Page) => page.getByRole("button", { name: "Go on with the draft" }).click();
const notes = async (page: Page) =>
	page.locator(`.as-table tbody td:nth-of-type(${NOTE + 1})`).allTextContents();

/** Ends when the page has dealt with the last key. */
async function note(page: Page, row: number, words: string): Promise<void> {
	await page
		.locator(`.grid .ht_master tbody tr:nth-child(${row + 1}) td`)
		.nth(NOTE)
		.click();
	await page.keyboard.type(words);
	await page.keyboard.press("Enter");
}
/** By the page's own clock, which a busy machine holds up as it does all else of the page. */
const later = (page: Page, ms: number) =>
	page.evaluate((wait) => new Promise<void>((done) => setTimeout(done, wait)), ms);

describe.each([
	["served", servedSite],
	["on a memory stick", siteOnStick],
] as const)("a browser that is killed, %s", { timeout: 120_000 }, (_, start) => {
	beforeAll(begin(start));
	afterAll(end);

	test("opens again with the edit, or with what was before it; from 200 ms on with the edit", async () => {
		let now = await opened();
		let kept = await notes(now.page);
		for (const [row, ms] of KILLED_AFTER_MS.entries()) {
			const edited = kept.with(row, `killed after ${ms}`);
			await note(now.page, row, `killed after ${ms}`);
			if (ms > 0) await later(now.page, ms);
			await now.kill();

			now = await opened();
			await goOn(now.page);
			await expect.poll(() => notes(now.page), patient).toContain("killed after 1000");
			const found = await notes(now.page);
			expect(ms >= SURELY_KEPT_MS ? [edited] : [edited, kept]).toContainEqual(found);
			await expect.poll(() => now.page.locator("#told").textContent()).toBe("");
			kept = found;
		}
		await now.kill();
	});
});

test("a browser that is killed while a file is saved leaves the file whole, as it was before", async () => {
	await begin(servedSite)();
	try {
		const before = await opened(answerFilePickers);
		await note(before.page, 0, "saved");
		await answer(before.page, "a.zip");
		await before.page.locator("#save-workbook").click();
		await before.page.locator("#kept", { hasText: "Saved in a.zip" }).waitFor();
		const whole = await fileOf(before.page, "a.zip");
		await note(before.page, 1, "not saved");
		const written = before.page.evaluate(
			() =>
				new Promise<void>((all) => {
					FileSystemWritableFileStream.prototype.close = () => {
						all();
						return new Promise(() => {});
					};
				}),
		);
		await before.page.locator("#save-workbook").click();
		await written;
		await before.kill();

		const { page, kill } = await opened(answerFilePickers);
		expect(await fileOf(page, "a.zip")).toEqual(whole);
		await goOn(page);
		await expect.poll(() => notes(page), patient).toContain("not saved");
		await answer(page, "a.zip");
		await page.locator("#open-files").click();
		await page.getByRole("button", { name: "Open it in place of this one" }).click();
		await page.locator("#told", { hasText: "was opened" }).waitFor();
		expect((await notes(page)).slice(0, 2)).toEqual(["saved", ""]);
		await kill();
	} finally {
		await end();
	}
}, 120_000);
