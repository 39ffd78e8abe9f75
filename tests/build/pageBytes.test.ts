import { existsSync, globSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { pageBytes } from "../bench/pageBytes.ts";
import { builtSite } from "../browser/site.ts";

/** The workbook on a line of 50 kB a second is there in seven seconds; an old laptop then has to read it too. */
const MOST_OF_WORKBOOK = 350_000;
const MOST_OF_A_READING_PAGE = 40_000;
const pages = [
	["index.html", MOST_OF_WORKBOOK],
	["guide.html", MOST_OF_A_READING_PAGE],
	["methods.html", MOST_OF_A_READING_PAGE],
	["sources.html", MOST_OF_A_READING_PAGE],
] as const;

test.each(
	languages.flatMap(({ code }) =>
		pages.map(([page, most]) => [folderOf(code), page, most] as const),
	),
)("page %s%s is fetched in at most %d compressed bytes", (language, page, most) => {
	const { compressed } = pageBytes(join(builtSite(), language, page));
	expect(compressed).toBeLessThanOrEqual(most);
});

/** What comes after the first screen, when the page is idle or somebody asks for it. */
const laterScripts: Readonly<Record<string, number>> = {
	"beginPage.js": 12_000,
	"findDialog.js": 5_000,
	"monthPage.js": 14_000,
	// A language that nobody has reviewed has the English of its cautions beside them.
	"onPages.js": 68_000,
	"pictures.js": 100_000,
	"readers.js": 15_000,
	"severalUnitsPage.js": 20_000,
	"shared.js": 15_000,
	"twoCopiesPage.js": 12_000,
	"wordsPage.js": 8_000,
};
/** Scripts that do not belong to the workbook's own. */
const others = ["workbook.js", "offline.js", "serviceWorker.js"];

test.each(languages.map(({ code }) => folderOf(code).replace("/", "")))(
	"every further script in %s/ keeps to a limit of its own",
	(language) => {
		const site = join(builtSite(), language);
		const found = globSync("*.js", { cwd: site }).filter((file) => !others.includes(file));
		expect(found.sort()).toEqual(Object.keys(laterScripts).sort());
		for (const file of found)
			expect([file, gzipSync(readFileSync(join(site, file)), { level: 9 }).length]).toSatisfy(
				([, bytes]: [string, number]) => bytes <= (laterScripts[file] ?? 0),
			);
	},
);

test("all that the workbook asks for is counted, each file once", () => {
	const files = ["index.html", "icon.svg", "workbook.css", "workbook.js", "offline.js"];
	const sizes = files.map((file) => statSync(join(builtSite(), file)).size);
	expect(pageBytes(join(builtSite(), "index.html")).raw).toBe(sizes.reduce((a, b) => a + b));
	expect(existsSync(join(builtSite(), "fr", "workbook.js"))).toBe(true);
});
