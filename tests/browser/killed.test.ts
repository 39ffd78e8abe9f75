import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readZip } from "../io/readZip.ts";
import { type KillableBrowser, startKillableBrowser } from "./killableBrowser.ts";
import { answer, answerFilePickers, fileOf } from "./pagesDisk.ts";
import { type Site, servedSite, siteOnStick } from "./site.ts";
import { withoutFilePickers } from "./workbookPage.ts";

/** How long after an edit; the first is killed once the page says that the edit is kept. */
const KILLED_AFTER_MS = ["kept", 1000, 200, 50, 0] as const;
const NOTE = 2;
const patient = { timeout: 15_000 };

let profile: string;
let site: Site;
const started: KillableBrowser[] = [];
async function begin(start: () => Site | Promise<Site>): Promise<void> {
	profile = mkdtempSync(join(tmpdir(), "basinbook profile "));
	site = await start();
}
afterEach(async () => {
	for (const { kill } of started.splice(0)) await kill();
	site.close();
	rmSync(profile, { recursive: true, force: true });
});

async function opened(prepare?: (context: BrowserContext) => Promise<void>) {
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
/** The draft that is offered; it begins with what was kept first. */
async function goOn(page: Page, first: string): Promise<string[]> {
	await page.getByRole("button", { name: "Go on with the draft" }).click();
	await expect.poll(async () => (await notes(page))[0], patient).toBe(first);
	return notes(page);
}
async function notes(page: Page): Promise<string[]> {
	await page.locator("body[data-drawing]").waitFor({ state: "detached" });
	return page.locator(`.as-table tbody td:nth-of-type(${NOTE + 1})`).allTextContents();
}

/** Ends when the page has dealt with the last key. */
async function note(page: Page, row: number, words: string): Promise<void> {
	await page
		.locator(`.grid .ht_master tbody tr:nth-child(${row + 1}) td`)
		.nth(NOTE)
		.click();
	await page.keyboard.type(words);
	await page.keyboard.press("Enter");
}
/** Whether the page knows of the edit, and has it on the disk. */
const isKept = (page: Page, words: string) =>
	page.evaluate(
		(text) =>
			document.querySelector(".grid")?.textContent?.includes(text) &&
			document.querySelector("body[data-drawing], #kept[data-keeping]") === null,
		words,
	);
const untilKept = (page: Page, words: string) =>
	expect.poll(() => isKept(page, words), patient).toBe(true);
const isSame = (one: Uint8Array, other: Uint8Array) => Buffer.compare(one, other) === 0;
/** By the page's own clock, which a busy machine holds up as it does all else of the page. */
const later = (page: Page, ms: number) =>
	page.evaluate((wait) => new Promise<void>((done) => setTimeout(done, wait)), ms);

describe.each([
	["served", servedSite],
	["on a memory stick", siteOnStick],
] as const)("a browser that is killed, %s", { timeout: 180_000 }, (_, start) => {
	beforeEach(() => begin(start));

	test("opens again with the edit once it was kept, and before that with the edit or with what was before it", async () => {
		let now = await opened();
		let before = await notes(now.page);
		for (const [row, when] of KILLED_AFTER_MS.entries()) {
			const words = `killed: ${when}`;
			const edited = before.with(row, words);
			await note(now.page, row, words);
			if (when === "kept") await untilKept(now.page, words);
			else if (when > 0) await later(now.page, when);
			const kept = await isKept(now.page, words);
			await now.kill();

			now = await opened();
			before = await goOn(now.page, "killed: kept");
			expect(kept ? [edited] : [edited, edited.with(row, "")]).toContainEqual(before);
			await expect.poll(() => now.page.locator("#told").textContent()).toBe("");
		}
		await now.kill();
	});

	test("while a download is written leaves the one before whole, and opens again with the edit", async () => {
		const folder = join(profile, "saved");
		mkdirSync(folder);
		// A browser names a download once it is whole; here each gets a name of its own.
		const whole = () => readdirSync(folder).filter((name) => !name.endsWith(".crdownload"));
		const bytesOf = (name: string) => readFileSync(join(folder, name));
		const { page, kill } = await opened(withoutFilePickers);
		const tools = await page.context().newCDPSession(page);
		await tools.send("Browser.setDownloadBehavior", {
			behavior: "allowAndName",
			downloadPath: folder,
		});
		await note(page, 0, "saved");
		await page.locator("#save-workbook").click();
		await expect.poll(() => whole().length, patient).toBe(1);
		const [first = ""] = whole();
		const saved = bytesOf(first);
		await note(page, 1, "not saved");
		await untilKept(page, "not saved");
		await page.locator("#save-workbook").click();
		await kill();

		expect(isSame(bytesOf(first), saved)).toBe(true);
		for (const name of whole()) {
			const { workbook, problems } = readZip(bytesOf(name));
			expect(problems.filter(({ weight }) => weight === "error")).toEqual([]);
			expect(workbook.tables["births.csv"]?.rows[0]?.[NOTE]).toBe("saved");
		}
		const now = await opened();
		expect((await goOn(now.page, "saved"))[1]).toBe("not saved");
		await now.kill();
	});
});

/** Whoever asks for a file's end waits for ever. @returns a promise that ends when somebody asks */
const holdTheEnd = (page: Page) =>
	page.evaluate(
		() =>
			new Promise<void>((asked) => {
				FileSystemWritableFileStream.prototype.close = () => {
					asked();
					return new Promise(() => {});
				};
			}),
	);

describe("a browser that is killed while a file is saved", { timeout: 180_000 }, () => {
	beforeEach(() => begin(servedSite));

	test.each([
		["before the end leaves it whole, as it was before", "held"],
		["after the end leaves it whole, as it is now", "ended"],
	] as const)("%s", async (_, until) => {
		const { page, kill } = await opened(answerFilePickers);
		// By text alone "not yet saved in a.zip" would be taken for it: letters count as equal, large or small.
		const saved = page.locator("#kept", { hasText: /^Saved in a\.zip$/ });
		await note(page, 0, "saved");
		await answer(page, "a.zip");
		await page.locator("#save-workbook").click();
		await saved.waitFor();
		await note(page, 1, "the last edit");
		await untilKept(page, "the last edit");
		let whole = await fileOf(page, "a.zip");
		const held = until === "held" ? holdTheEnd(page) : undefined;
		await page.locator("#save-workbook").click();
		if (held) await held;
		else {
			await saved.waitFor();
			const before = whole;
			whole = await fileOf(page, "a.zip");
			expect(isSame(whole, before)).toBe(false);
		}
		await kill();

		const now = await opened(answerFilePickers);
		expect(isSame(await fileOf(now.page, "a.zip"), whole)).toBe(true);
		expect((await goOn(now.page, "saved"))[1]).toBe("the last edit");
		await answer(now.page, "a.zip");
		await now.page.locator("#open-files").click();
		await now.page.getByRole("button", { name: "Open it in place of this one" }).click();
		await now.page.locator("#told", { hasText: "was opened" }).waitFor();
		const second = until === "held" ? "" : "the last edit";
		await expect
			.poll(async () => (await notes(now.page)).slice(0, 2), patient)
			.toEqual(["saved", second]);
		await now.kill();
	});
});
