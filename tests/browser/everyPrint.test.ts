import { createRequire } from "node:module";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { pages } from "../../src/ui/pages.ts";
import { startBrowser } from "./chromium.ts";
import { type Printed, printed, readPdf } from "./paper.ts";
import { type Site, servedSite, siteOnStick } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const { version } = createRequire(import.meta.url)("../../package.json") as { version: string };
/** The invented unit of the demo, and a day of its plan. */
const UNIT = "Willow Ford";
const A_DAY = /\b[1-7] Mar 2027/;

/** Sheets whose act can hurt someone, and words of the caution that must be on every page of them. */
const cautioned: Readonly<Record<string, RegExp>> = {
	"this-week": /Chlorine and vinegar never in the same basin/,
	"mixing.csv": /Never let chlorine meet vinegar/,
	"mixing-days.csv": /Never let chlorine meet vinegar/,
	"wall-table.csv": /Never let chlorine meet vinegar/,
	"boiling.csv": /Boiling water scalds/,
	"run-sheet.csv": /chlorine/i,
};

/** What is made for paper, by the page that has it. */
const printOuts = new Map(
	await Promise.all(
		pages.map(async ({ file, load }) => {
			const on = await load();
			return [file, "mount" in on ? [] : (on.prints ?? [])] as const;
		}),
	),
);

describe("every print", { timeout: 300_000 }, () => {
	let browser: Browser;
	let sites: readonly [Site, Site];
	beforeAll(async () => {
		browser = await startBrowser();
		sites = [await servedSite(), await siteOnStick()];
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		for (const site of sites ?? []) site.close();
	});

	/** What no page may be without. */
	function expectWhole({ pages }: Printed, what: string): void {
		expect(pages.length, what).toBeGreaterThan(0);
		for (const [at, text] of pages.entries()) {
			const page = `${what}, page ${at + 1} of ${pages.length}`;
			expect(text, page).toContain(UNIT);
			expect(text, page).toMatch(A_DAY);
			expect(text, page).toContain(`Basinbook ${version}`);
		}
	}

	test.each([
		["served", 0],
		["from a stick", 1],
	] as const)(
		"every sheet and page prints with unit, dates and version on each page, %s",
		async (_, at) => {
			const workbook = await WorkbookPage.open(browser, sites[at] as Site);
			for (const sheet of await workbook.sheets()) {
				if (printOuts.get(sheet)?.length) continue;
				await workbook.goTo(sheet);
				const paper = readPdf(await workbook.page.pdf({ preferCSSPageSize: true }));
				expectWhole(paper, sheet);
				const caution = cautioned[sheet];
				if (caution) expect(paper.text.replace(/\s+/g, " "), sheet).toMatch(caution);
			}
			expect(workbook.errors).toEqual([]);
			await workbook.close();
		},
	);

	test.each(["A4", "Letter"] as const)(
		"whatever is made for paper is whole on %s",
		async (format) => {
			const workbook = await WorkbookPage.open(browser, sites[0]);
			for (const [sheet, outs] of printOuts) {
				if (outs.length === 0) continue;
				await workbook.goTo(sheet);
				for (const out of outs) {
					const paper = await printed(workbook.page, out.name, format);
					expectWhole(paper, `${sheet}: ${out.name}`);
					const caution = cautioned[sheet];
					if (caution)
						for (const page of paper.pages)
							expect(page.replace(/\s+/g, " "), sheet).toMatch(caution);
				}
			}
			await workbook.close();
		},
	);
});
