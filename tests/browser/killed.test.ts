import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as later } from "node:timers/promises";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type KillableBrowser, startKillableBrowser } from "./killableBrowser.ts";
import { type Site, servedSite, siteOnStick } from "./site.ts";

/** A draft is on the disk within this time after the page shows the edit; measured: 5 to 45 ms. */
const ON_DISK_MS = 500;

describe.each([
	["served", servedSite],
	["on a memory stick", siteOnStick],
] as const)("a browser that is killed, %s", { timeout: 120_000 }, (_, start) => {
	let site: Site;
	let profile: string;
	const started: KillableBrowser[] = [];
	beforeAll(async () => {
		profile = mkdtempSync(join(tmpdir(), "basinbook profile "));
		site = await start();
	});
	afterAll(async () => {
		for (const { kill } of started) await kill();
		site?.close();
		rmSync(profile, { recursive: true, force: true });
	});

	async function opened(): Promise<{ page: Page; kill(): Promise<void> }> {
		const browser = await startKillableBrowser(profile);
		started.push(browser);
		const { context, kill } = browser;
		const page = context.pages()[0] ?? (await context.newPage());
		page.setDefaultTimeout(20_000);
		await page.goto(`${site.address}index.html#births.csv`);
		await page.locator("#sheet h1").waitFor();
		return { page, kill };
	}
	const note = (page: Page, row: number) =>
		page
			.locator(`.as-table tbody tr:nth-child(${row + 1}) td`)
			.nth(2)
			.textContent();

	test("the last edit is there at the next opening", async () => {
		const before = await opened();
		const { page } = before;
		await page.locator(".grid .ht_master tbody tr:nth-child(1) td").nth(2).click();
		for (const words of ["first", "second", "third", "last"]) {
			await page.keyboard.type(words);
			await page.keyboard.press("Enter");
		}
		await expect.poll(() => note(page, 3), { timeout: 10_000 }).toBe("last");
		await page.keyboard.type("half a wo");
		await later(ON_DISK_MS);
		await before.kill();

		const after = await opened();
		await after.page.getByRole("button", { name: "Go on with the draft" }).click();
		await expect.poll(() => note(after.page, 3), { timeout: 10_000 }).toBe("last");
		expect(await note(after.page, 0)).toBe("first");
		await after.kill();
	});
});
