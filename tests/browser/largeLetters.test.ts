import { expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** Grids of each kind, and pictures. */
const SHEETS = [
	"this-week",
	"day-plan.csv",
	"kit-register.csv",
	"lots.csv",
	"unit.csv",
	"forecast.csv",
	"kit-cover.csv",
	"stock-ahead.csv",
	"month",
];
const USUAL_PX = 16;

test.each(languages.map(({ code }) => folderOf(code)))(
	"letters of twice the size cut no more off than a screen of half the size /%s",
	{ timeout: 240_000 },
	async (language) => {
		const usual = await cutOff(language, USUAL_PX, { width: 683, height: 384 });
		const large = await cutOff(language, 2 * USUAL_PX, { width: 1366, height: 768 });
		expect(large.filter((words) => !usual.includes(words))).toEqual([]);
	},
);

/** What is cut off, and on which sheet, for a person whose browser has letters of that size. */
async function cutOff(
	language: string,
	letters: number,
	viewport: { readonly width: number; readonly height: number },
): Promise<string[]> {
	const at = { ...onStick, address: onStick.address + language };
	const workbook = await WorkbookPage.open(browser, at, { viewport });
	const { page } = workbook;
	const tools = await workbook.context.newCDPSession(page);
	await tools.send("Page.setFontSizes", { fontSizes: { standard: letters } });
	await page.reload();
	const root = page.locator("html");
	expect(await root.evaluate((html) => getComputedStyle(html).fontSize)).toBe(`${letters}px`);
	const cut: string[] = [];
	for (const sheet of SHEETS) {
		await workbook.goTo(sheet);
		await workbook.drawn();
		await page.locator(".grid td, .picture svg").first().waitFor();
		await page.locator(".to-be-drawn").waitFor({ state: "detached" });
		for (const words of await page.evaluate(wordsCut)) cut.push(`${sheet}: ${words}`);
	}
	await closeClean(workbook);
	return cut;
}

/** In the page: words that go beyond the cell, name of a column or picture they stand in. */
function wordsCut(): string[] {
	const inCells = [
		...document.querySelectorAll<HTMLElement>(
			".grid :is(.ht_master, .ht_clone_left) :is(.head, td, td .figure, td .beneath)",
		),
	].filter(
		(each) => each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1,
	);
	const inPictures = [...document.querySelectorAll(".picture svg text")].filter((words) => {
		const [a, b] = [words, words.closest("svg")].map((each) => each?.getBoundingClientRect());
		return a && b && (a.left < b.left - 1 || a.right > b.right + 1 || a.bottom > b.bottom + 1);
	});
	return [...inCells, ...inPictures].map(({ textContent }) => textContent ?? "");
}
