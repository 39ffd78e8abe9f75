import { describe, expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { axeViolations } from "./axeViolations.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, served as site } from "./fixture.ts";
import { focusIn, SOON } from "./sheetTools.ts";
import { WorkbookPage } from "./workbookPage.ts";

const PHONE = { width: 360, height: 740 };
/** A laptop, the same at 200 %, and a phone. */
const SCREENS = [{ width: 1366, height: 768 }, { width: 683, height: 384 }, PHONE];

describe("room", { timeout: 240_000 }, () => {
	test.each(languages.map(({ code }) => folderOf(code)))(
		"the first row of every grid is on the first screen; its columns can all be scrolled to; nobody's margin takes its width /%s",
		async (language) => {
			const at = { ...site, address: site.address + language };
			for (const viewport of SCREENS) {
				const workbook = await WorkbookPage.open(browser, at, { viewport });
				let seen = 0;
				for (const sheet of await workbook.sheets()) {
					await workbook.goTo(sheet);
					const row = workbook.page.locator(".desk .grid .ht_master tbody tr").first();
					if (!(await row.count())) continue;
					seen++;
					await expect
						.poll(() => row.evaluate((tr) => Math.ceil(tr.getBoundingClientRect().bottom)), SOON)
						.toBeLessThanOrEqual(viewport.height);
					expect(await roomBeside(workbook), `${sheet} on ${viewport.width} px`).toBeGreaterThan(
						99,
					);
					const [grid, sheetWide] = await widths(workbook);
					expect(grid, `${sheet} on ${viewport.width} px`).toBe(sheetWide);
				}
				expect(seen).toBeGreaterThan(35);
				await closeClean(workbook);
			}
		},
	);

	test.each(languages.map(({ code }) => folderOf(code)))(
		"no figure of the plan is cut off by its column /%s",
		async (language) => {
			const at = { ...site, address: site.address + language };
			for (const viewport of SCREENS.filter(({ height }) => height > 700)) {
				const workbook = await WorkbookPage.open(browser, at, { viewport });
				const small = workbook.page.locator(".grid .ht_master td:nth-child(n + 2) .beneath");
				await expect.poll(() => small.count(), SOON).toBeGreaterThan(1);
				const cut = await small.evaluateAll((words) =>
					words
						.filter((each) => each.scrollWidth > each.clientWidth)
						.map(({ textContent }) => textContent),
				);
				expect(cut).toEqual([]);
				await closeClean(workbook);
			}
		},
	);

	test.each([
		["tonight.csv", "li", 7],
		["levers.csv", "td.numeric", 5],
	])("%s is said in words where its cells are cut", async (sheet, lines, count) => {
		const workbook = await WorkbookPage.open(browser, site, { viewport: PHONE });
		await workbook.goTo(sheet);
		await workbook.drawn();
		const shown = workbook.page.locator(`.on-phone ${lines}:visible`);
		await expect.poll(() => shown.count(), SOON).toBe(count);
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.page.setViewportSize({ width: 1366, height: 768 });
		await expect.poll(() => shown.count(), SOON).toBe(0);
		await closeClean(workbook);
	});

	test("a number says why beside the grid; Escape sends the answer away for good, Enter asks again and leads into it and back", async () => {
		const workbook = await WorkbookPage.open(browser, site, { bypassCSP: true });
		const { page } = workbook;
		const pane = page.locator(".pane");
		expect(await pane.isVisible()).toBe(false);
		await workbook.click(1, 3);
		await pane.waitFor();
		expect(await focusIn(workbook, ".grid")).toBe(true);
		await page.keyboard.press("Escape");
		await pane.waitFor({ state: "hidden" });
		await workbook.goTo("kit-cover.csv");
		await workbook.click(2, 1);
		await expect.poll(() => page.locator(".grid").getAttribute("aria-label"), SOON).toMatch(/3;/);
		expect(await pane.isVisible()).toBe(false);
		await page.keyboard.press("Enter");
		await pane.waitFor();
		expect(await focusIn(workbook, ".pane")).toBe(true);
		expect(await axeViolations(workbook)).toEqual([]);
		await page.keyboard.press("Enter");
		await pane.waitFor({ state: "hidden" });
		expect(await focusIn(workbook, ".grid")).toBe(true);
		await closeClean(workbook);
	});

	test("on a phone the answer lies over the foot, and the cell asked stays in sight above it", async () => {
		const workbook = await WorkbookPage.open(browser, site, { viewport: PHONE, bypassCSP: true });
		const { page } = workbook;
		await workbook.click(7, 1);
		await page.locator(".pane").waitFor();
		const above = async () => {
			const cell = await page
				.locator(".grid .ht_master tbody tr:nth-child(8) td")
				.nth(1)
				.boundingBox();
			const pane = await page.locator(".pane").boundingBox();
			return (cell?.y ?? 0) + (cell?.height ?? 0) <= (pane?.y ?? 0);
		};
		await expect.poll(above, SOON).toBe(true);
		expect(await axeViolations(workbook)).toEqual([]);
		await page.getByRole("button", { name: "Back to the cells" }).click();
		expect(await focusIn(workbook, ".grid")).toBe(true);
		await page.locator(".tools-fold summary").click();
		await page.getByRole("button", { name: "Print this page" }).waitFor();
		await closeClean(workbook);
	});

	test.each(languages.map(({ code }) => folderOf(code)))(
		"a phone shows a setting's whole name beside its value /%s",
		async (language) => {
			const at = { ...site, address: site.address + language };
			const workbook = await WorkbookPage.open(browser, at, { viewport: PHONE });
			await workbook.goTo("unit.csv");
			const named = workbook.page.locator(".grid .ht_clone_left td.label");
			await expect.poll(() => named.count(), SOON).toBeGreaterThan(5);
			const cut = await named.evaluateAll((cells) =>
				cells
					.map((td) => td.firstElementChild ?? td)
					.filter((name) => name.scrollHeight > name.clientHeight)
					.map(({ textContent }) => textContent),
			);
			expect(cut).toEqual([]);
			const value = workbook.page.locator(".grid .ht_master td.typed").first();
			const { x = 0, width = 0 } = (await value.boundingBox()) ?? {};
			expect(x + width).toBeLessThanOrEqual(PHONE.width);
			await closeClean(workbook);
		},
	);

	test.each(languages.map(({ code }) => folderOf(code)))(
		"a phone shows Monday's tables whole, and on two lines whatever product is chosen at the start /%s",
		async (language) => {
			const at = { ...site, address: site.address + language };
			const workbook = await WorkbookPage.open(browser, at, { viewport: PHONE }, "monday");
			const { page } = workbook;
			await expect.poll(() => page.locator(".monday-step .wide table").count(), SOON).toBe(2);
			const tables = await page
				.locator(".monday-step .wide")
				.evaluateAll((all) => all.map((each) => each.scrollWidth - each.clientWidth));
			expect(Math.max(...tables)).toBe(0);
			await workbook.goTo("begin");
			const [lines = 0, room = 0] = await page
				.locator("#store-begin-product-kind")
				.evaluate(linesOfOptions);
			expect(lines).toBe(2);
			expect(room).toBeGreaterThan(lines);
			await closeClean(workbook);
		},
	);

	test("a phone shows a product's whole name in the plan, on two lines", async () => {
		const workbook = await WorkbookPage.open(browser, site, { viewport: PHONE });
		const cell = workbook.page.locator(".grid .ht_clone_left td", { hasText: "Liquid bleach" });
		await cell.waitFor();
		const isWhole = () =>
			cell.evaluate((td) => td.scrollWidth <= td.clientWidth && td.scrollHeight <= td.clientHeight);
		await expect.poll(isWhole, SOON).toBe(true);
		await closeClean(workbook);
	});
});

/** Pixels that the columns which stay in place leave to the others. */
function roomBeside({ page }: WorkbookPage): Promise<number> {
	return page.locator(".desk .grid").evaluate((grid) => {
		const inPlace = grid.querySelector(".ht_clone_left")?.getBoundingClientRect().width ?? 0;
		return grid.clientWidth - inPlace;
	});
}

function widths({ page }: WorkbookPage): Promise<number[]> {
	return page.evaluate(() =>
		[".desk .grid", ".sheet-parts"].map((place) =>
			Math.round(document.querySelector(place)?.getBoundingClientRect().width ?? 0),
		),
	);
}

/** In the page: lines that the longest of its options takes in a list, and those for which it has room. */
function linesOfOptions(list: HTMLSelectElement | SVGElement): number[] {
	const style = getComputedStyle(list);
	const words = document.createElement("div");
	Object.assign(words.style, {
		font: style.font,
		whiteSpace: style.whiteSpace,
		// Beside the words stand the list's arrow and their own edges.
		width: `${list.clientWidth - 40}px`,
		overflowX: "auto",
	});
	document.body.append(words);
	const heights = [...list.querySelectorAll("option")].map(({ textContent }) => {
		words.textContent = textContent;
		return words.scrollWidth > words.clientWidth ? Number.POSITIVE_INFINITY : words.offsetHeight;
	});
	words.textContent = "x";
	const line = words.offsetHeight;
	words.remove();
	return [Math.max(...heights) / line, list.clientHeight / line];
}
