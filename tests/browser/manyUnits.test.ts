import { describe, expect, test } from "vitest";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { unitWith } from "../core/smallUnit.ts";
import { drop } from "./drop.ts";
import { browser, onStick as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

const UNITS = 60;
/** Planning takes its time on a machine that does other things too. */
const ALL_READ = { timeout: 150_000 };

/** Small workbooks, each of a unit of its own. */
function workbooks() {
	return Array.from({ length: UNITS }, (_, at) => {
		const { tables } = unitWith({
			unit_name: `Small unit ${at}`,
			births_per_day: `${1 + at / 20}`,
		});
		const texts = Object.entries(tables).map(([file, { header, rows }]) => [
			file,
			[header, ...rows].map((cells) => `${cells.join(",")}\n`).join(""),
		]);
		return { name: `small-${at}.zip`, bytes: zipTexts(Object.fromEntries(texts)) };
	});
}

describe("many units at once, on a memory stick", { timeout: 240_000 }, () => {
	test("the page has a turn between any two units", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "several-units");
		const { page } = workbook;
		// A task of its own after each of the page's: how far the bar is by then, again and again.
		await page.evaluate(() => {
			const seen: number[] = [];
			Object.assign(window, { seen });
			const { port1, port2 } = new MessageChannel();
			port1.onmessage = () => {
				const bar = document.querySelector<HTMLProgressElement>(".progress progress");
				if (bar && !bar.hidden) seen.push(bar.value);
				if (seen.length === 0 || !bar?.hidden) port2.postMessage(undefined);
			};
			port2.postMessage(undefined);
		});
		await drop(workbook, workbooks());
		await expect.poll(() => workbook.headline(), ALL_READ).toContain(`${UNITS} units together`);
		const seen = await page.evaluate(() => (window as unknown as { seen: number[] }).seen);
		expect(new Set(seen).size).toBeGreaterThan(UNITS * 0.9);
		await page.getByText(`1 to 50 of ${UNITS} units`).waitFor();
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("the reading goes on while another page is looked at and typed into; those read so far are shown when asked", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "several-units");
		const { page } = workbook;
		await drop(workbook, workbooks());
		const bar = page.locator(".progress progress");
		await expect.poll(() => bar.getAttribute("value")).toMatch(/^[1-9]/);
		await page.getByRole("button", { name: "Show those read so far" }).click();
		await page.locator(".units-table tbody tr").first().waitFor();
		await expect
			.poll(() => page.getByRole("button", { name: "Print the order" }).isDisabled())
			.toBe(true);
		await workbook.goTo("this-week");
		await workbook.type(0, 3, "9");
		await expect.poll(() => workbook.row("Births").then((row) => row.join(" "))).toContain("9");
		await workbook.goTo("several-units");
		await expect.poll(() => workbook.headline(), ALL_READ).toContain(`${UNITS} units together`);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});
