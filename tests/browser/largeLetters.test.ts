import { expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

interface Viewport {
	readonly width: number;
	readonly height: number;
}

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
const FOLDERS = languages.map(({ code }) => folderOf(code));

test.each(FOLDERS)(
	"letters of twice the size cut no more off than a screen of half the size /%s",
	{ timeout: 240_000 },
	async (language) => {
		const usual = await cutOff(language, USUAL_PX, { width: 683, height: 384 });
		const large = await cutOff(language, 2 * USUAL_PX, { width: 1366, height: 768 });
		expect(large.filter((words) => !usual.includes(words))).toEqual([]);
	},
);

test.each(FOLDERS)(
	"on a phone with letters of twice the size no page scrolls sideways /%s",
	{ timeout: 240_000 },
	async (language) => {
		const workbook = await withLetters(language, 2 * USUAL_PX, { width: 360, height: 740 });
		const wider: string[] = [];
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			await workbook.drawn();
			const [wide, room] = await workbook.page.evaluate(() => [
				document.documentElement.scrollWidth,
				innerWidth,
			]);
			if (wide > room) wider.push(`${sheet}: ${wide}`);
		}
		expect(wider).toEqual([]);
		await closeClean(workbook);
	},
);

/** What is cut off, and on which sheet, for a person whose browser has letters of that size. */
async function cutOff(language: string, letters: number, viewport: Viewport): Promise<string[]> {
	const workbook = await withLetters(language, letters, viewport);
	const { page } = workbook;
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

/** The workbook as a browser with letters of that size shows it. */
async function withLetters(
	language: string,
	letters: number,
	viewport: Viewport,
): Promise<WorkbookPage> {
	const at = { ...onStick, address: onStick.address + language };
	const workbook = await WorkbookPage.open(browser, at, { viewport });
	const tools = await workbook.context.newCDPSession(workbook.page);
	await tools.send("Page.setFontSizes", { fontSizes: { standard: letters } });
	await workbook.page.reload();
	const root = workbook.page.locator("html");
	expect(await root.evaluate((html) => getComputedStyle(html).fontSize)).toBe(`${letters}px`);
	return workbook;
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
