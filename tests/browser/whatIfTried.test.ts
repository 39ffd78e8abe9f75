import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { closeClean } from "./changedDemo.ts";
import { comparedRow } from "./comparedRow.ts";
import { browser, onStick as site } from "./fixture.ts";
import { savedFolder } from "./savedFolder.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe("what is tried", { timeout: 60_000 }, () => {
	const folder = savedFolder();

	/** What Save writes, to the byte. */
	async function savedBytes(page: WorkbookPage["page"], path: string): Promise<string> {
		const download = page.waitForEvent("download");
		await page.locator("#save-workbook").click();
		await (await download).saveAs(path);
		const files = Object.entries(unzipSync(readFileSync(path)));
		return files.map(([name, bytes]) => `${name}\n${strFromU8(bytes)}`).join("\n");
	}

	test("a copy is tried by keyboard, and the workbook, its draft and its files stay as they are", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "what-if");
		const { page } = workbook;
		const before = await savedBytes(page, join(folder, "before.zip"));
		const people = page.getByLabel(/^People/);
		await people.focus();
		await expect.poll(() => people.inputValue()).toBe("1");
		await page.keyboard.press("Control+A");
		await page.keyboard.type("many");
		await page.keyboard.press("Enter");
		await expect
			.poll(() => page.locator("#store-trial-workers_per_round-wrong").textContent())
			.toContain("allowed is");
		await expect.poll(() => workbook.headline()).toContain("Change something in the copy");
		await page.keyboard.press("Control+A");
		await page.keyboard.type("3");
		await page.keyboard.press("Enter");
		await expect
			.poll(() => workbook.headline())
			.toMatch(/^What you try is safer: 0\.\d+ of 1\u202f000/);
		await page.getByLabel(/^Kits listed as in service/).fill("3");
		await page.keyboard.press("Enter");
		await expect.poll(() => comparedRow(workbook, "Kits listed as in service")).toEqual(["6", "3"]);
		await page.getByLabel("Another setting").selectOption("pots");
		await page.keyboard.type("2");
		await page.keyboard.press("Tab");
		expect(await page.locator("#undo").isDisabled()).toBe(true);
		expect(await savedBytes(page, join(folder, "while.zip"))).toEqual(before);

		// A reload leaves what is tried to the person who tries it.
		await page.reload();
		await page.getByRole("button", { name: "Go on with the draft" }).click();
		await expect.poll(() => comparedRow(workbook, "Kits listed as in service")).toEqual(["6", "3"]);
		await page.getByRole("button", { name: "Use this", exact: true }).press("Enter");
		await expect.poll(() => workbook.headline()).toContain("Change something in the copy");
		await expect.poll(() => people.inputValue()).toBe("3");
		await page.locator("#undo").click();
		await expect.poll(() => people.inputValue()).toBe("1");
		await expect.poll(() => page.getByLabel(/^Kits listed/).inputValue()).toBe("6");
		await closeClean(workbook);
	});

	test("what is tried is thrown away at a word, and a reason leads back to its field", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "what-if");
		const { page } = workbook;
		const beds = page.getByLabel("Delivery beds");
		await beds.fill("5");
		await page.keyboard.press("Enter");
		await page.getByRole("button", { name: /Kits needed, what you try. Why\?/ }).click();
		const pane = page.locator(".what-if .pane");
		await pane.getByRole("button", { name: "computed: why?" }).first().click();
		await pane.locator("li", { hasText: "Delivery beds" }).getByRole("button").click();
		await expect.poll(() => beds.evaluate((field) => field === document.activeElement)).toBe(true);
		await page.getByRole("button", { name: "Throw away" }).click();
		await expect.poll(() => beds.inputValue()).toBe("2");
		await expect.poll(() => workbook.headline()).toContain("Change something in the copy");
		expect(await page.locator("#undo").isDisabled()).toBe(true);
		await closeClean(workbook);
	});
});
