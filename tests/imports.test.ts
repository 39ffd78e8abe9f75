import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, it } from "vitest";

const SRC = join(import.meta.dirname, "../src");
/** Also of data (`with { type: "json" }`), and what is loaded when it is asked for. */
const IMPORT = /(?:^import |^.*\bfrom |\bimport\()"([^"]+)"/gm;

/*
 * That no circle of imports is left is the linter's to hold (noImportCycles in biome.json):
 * a file in a circle cannot be read, moved or tried without all the others of it. Imports of
 * types count too, because a reader has to follow them and they hide that two files are one.
 */

/** The folders of the core that hold the calculations and settings of one subject each. */
const SUBJECTS = "births|forecast|kits|rounds|methods|chlorine|water|vinegar|stock|record";

interface Arrow {
	/** Files the rule is about, from src. */
	readonly from: RegExp;
	/** What they must not import: a path from src, or a package. */
	readonly to: RegExp;
	readonly why: string;
}

const forbidden: Arrow[] = [
	{
		from: /^core\//,
		to: /^(io|cli|ui|pages|layouts|components)\//,
		why: "The core is what the command line, the page and the tests share; it knows none of them.",
	},
	{
		from: /^core\//,
		to: /^(?!core\/|zod\/mini$)/,
		why: "The core is pure: no file, no browser, no clock, no library but zod, so that every number can be worked out again anywhere.",
	},
	{
		from: /^core\/[^/]+$/,
		to: /^core\/(?!values\/)[^/]+\//,
		why: "What column, sheet, figure and problem are, everything in the core stands on; they know only kinds of cell.",
	},
	{
		from: /^core\/(values|counts)\//,
		to: /^core\/(?!values\/|counts\/)[^/]+\//,
		why: "How a cell is read, and how likely a number is, are the same whatever they are about.",
	},
	{
		from: new RegExp(`^core/(${SUBJECTS})/`),
		to: new RegExp(`^core/(?!${SUBJECTS}|values|counts)[^/]+/`),
		why: "A calculation takes values and gives one; in which file and column they stand is not its business, so that it can be tried, checked and used by itself.",
	},
	{
		from: /^core\/sheets\//,
		to: /^core\/(read|plan|edit|units)\//,
		why: "A sheet says what its columns are; who reads it, fills it in or changes it comes after.",
	},
	{
		from: /^core\/read\//,
		to: /^core\/(plan|edit|units)\//,
		why: "What was typed is understood before anything is made of it; a reading that planned would show the plan's numbers as typed.",
	},
	{
		from: /^core\/plan\//,
		to: /^core\/(edit|units)\//,
		why: "A plan looks at one workbook and changes nothing.",
	},
	{
		from: /^core\/edit\//,
		to: /^core\/(plan|units)\//,
		why: "What is typed, moved on or entered changes the workbook; the plan is made anew from it, never the other way round.",
	},
	{
		from: /^core\/merge\//,
		to: /^core\/(read|plan|edit|units)\//,
		why: "Copies come together text by text; what the texts mean is read from both together afterwards.",
	},
	{
		from: /^core\/units\//,
		to: /^core\/(plan|edit)\//,
		why: "Several units are brought together from the files they send; their workbooks are elsewhere.",
	},
	{
		from: /^io\//,
		to: /^(cli|ui|pages|layouts|components)\//,
		why: "Reading and writing serve the command line and the page alike, so they know neither.",
	},
	{
		from: /^cli\//,
		to: /^(ui|pages|layouts|components)\//,
		why: "The command line runs without a browser.",
	},
	{
		from: /^(core|io|cli|ui|pages|layouts|components)\//,
		to: /^(messages\/(?!review|languages)|build\/)/,
		why: "Catalogues and the making of the site are at work while it is built; the program has their result in it.",
	},
	{
		from: /^ui\//,
		to: /^(cli|pages|layouts|components)\//,
		why: "The script of the page is finished before the page is composed around it.",
	},
	{
		from: /^ui\/(?!grid\/library\/)/,
		to: /^handsontable/,
		why: "The grid is an old release, pinned for its licence; one adapter contains its age and can be exchanged.",
	},
	{
		from: /^(?!io\/)/,
		to: /^fflate$/,
		why: "How a workbook lies on disk has one home.",
	},
	{
		from: /^(?!io\/|ui\/grid\/)/,
		to: /^papaparse$/,
		why: "Separated text is read where a file comes in, and where a grid is pasted into.",
	},
];

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
	.filter((file) => /\.(ts|astro)$/.test(file))
	.map((file) => file.replaceAll("\\", "/"));

/** What a file imports, as paths from src or names of packages. */
function importsOf(file: string): string[] {
	const text = readFileSync(join(SRC, file), "utf8");
	return [...text.matchAll(IMPORT)].map(([, target = ""]) =>
		target.startsWith(".")
			? relative(SRC, join(SRC, file, "..", target)).replaceAll("\\", "/")
			: target,
	);
}

/** Rules with no one to break them would pass for nothing. */
it("reads the imports of every source file", () => {
	expect(files.length).toBeGreaterThan(50);
	expect(files.flatMap(importsOf).length).toBeGreaterThan(200);
});

describe("imports go one way", () => {
	for (const { from, to, why } of forbidden)
		it(`${from.source} does not import ${to.source}: ${why}`, () => {
			const broken = files
				.filter((file) => from.test(file))
				.flatMap((file) =>
					importsOf(file)
						.filter((target) => to.test(target))
						.map((target) => `${file} imports ${target}`),
				);
			expect(broken).toEqual([]);
		});
});
