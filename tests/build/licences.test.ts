import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { licenceText } from "../../src/build/licences.ts";
import {
	packageFolder,
	type ShippedPackage,
	shippedPackages,
} from "../../src/build/shippedPackages.ts";

const root = join(import.meta.dirname, "../..");

/**
 * What the bundle is known to carry: a line of each package's own code that survives
 * being made small. They are looked for in the script itself, so that a fault in the
 * list of modules shows.
 */
const TRACES: Readonly<Record<string, RegExp>> = {
	handsontable: /handsontableInput/,
	internmap: /extends Map\{constructor\(/,
	papaparse: /UndetectableDelimiter/,
	fflate: /invalid zip data/,
	zod: /invalid_type/,
	"@observablehq/plot": /plot-d6a7b5/,
	"d3-array": /compare is not a function/,
	"d3-color": /rebeccapurple/,
	"d3-format": /invalid format: /,
	"d3-geo": /invalid digits: /,
};

function built(file: string): string {
	const path = join(root, "dist", file);
	if (!existsSync(path))
		throw new Error("The site is not built: run npm run build before these tests.");
	return readFileSync(path, "utf8");
}

describe("licences of the built site", () => {
	const text = built("licences.txt");
	const named = [...text.matchAll(/^(\S+) (\d[\w.-]*): (\S+)$/gm)].map(([, name = ""]) => name);

	test("every package known to be in the scripts is named", () => {
		const script = built("workbook.js") + built("pictures.js");
		expect(Object.keys(TRACES).filter((name) => !TRACES[name]?.test(script))).toEqual([]);
		expect(Object.keys(TRACES).filter((name) => !named.includes(name))).toEqual([]);
	});

	test("everything the program depends on is named, in the version that is installed", () => {
		const { dependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
		for (const [name, version] of Object.entries(dependencies))
			expect(text).toContain(`\n${name} ${version}: `);
	});

	test("every package named has its whole licence text", () => {
		expect(named.length).toBeGreaterThan(15);
		for (const name of named) {
			const folder = join(root, "node_modules", name);
			const files = readdirSync(folder).filter((file) => /^licen[cs]e/i.test(file));
			expect(files.length, `${name} has a licence file`).toBeGreaterThan(0);
			for (const file of files)
				expect(text, name).toContain(readFileSync(join(folder, file), "utf8").trim());
		}
	});

	test("our own comes first, and who is named within a file is named", () => {
		expect(text.indexOf(readFileSync(join(root, "LICENSE"), "utf8").trim())).toBeLessThan(50);
		expect(text).toContain("Vladimir Agafonkin");
		expect(text).toContain("Charles Karney");
	});

	test("every page leads to it", () => {
		for (const page of ["index.html", "guide.html", "methods.html", "sources.html"])
			expect(built(page)).toContain('href="./licences.txt"');
	});
});

describe("what may be given out", () => {
	const part: ShippedPackage = {
		name: "part",
		version: "1.0.0",
		licence: "MIT",
		texts: ["Take it."],
		notices: [],
	};

	test.each(["GPL-3.0", "SEE LICENSE IN LICENSE.txt", "none declared", "CC-BY-NC-4.0"])(
		"a part under %s stops the build",
		(licence) => {
			expect(() => licenceText([{ ...part, licence }])).toThrow(`part (${licence})`);
		},
	);

	test("a part without a licence file is said to have none", () => {
		const text = licenceText([{ ...part, texts: [], licence: "ISC" }]);
		expect(text).toContain(
			"part 1.0.0: ISC\n\nIt comes without a licence file; its package.json declares ISC.",
		);
	});
});

describe("packages in a bundle", () => {
	const folder = mkdtempSync(join(tmpdir(), "basinbook packages "));
	afterAll(() => rmSync(folder, { recursive: true }));
	const modules = `${folder.replaceAll("\\", "/")}/node_modules`;

	function install(
		name: string,
		source: string,
		dependencies: Record<string, string> = {},
	): string {
		const place = join(modules, name);
		mkdirSync(place, { recursive: true });
		const manifest = { name, version: "1.0.0", license: "MIT", main: "index.js", dependencies };
		writeFileSync(join(place, "package.json"), JSON.stringify(manifest));
		writeFileSync(join(place, "index.js"), source);
		writeFileSync(join(place, "LICENSE"), `Licence of ${name}`);
		return `${modules}/${name}/index.js`;
	}
	const namesOf = (ids: string[]) =>
		shippedPackages(ids, `${modules}/bundler`).map(({ name }) => name);

	test("a package that lies inside another's file is found, one that was left away is not", () => {
		install("inside", "");
		install("deeper", "");
		install("left-away", "");
		const outer = install(
			"@scope/outer",
			'import x from "left-away"; // Copyright 2001 A. Person',
			{
				inside: "1",
				"left-away": "1",
			},
		);
		install("inside", "", { deeper: "1" });
		expect(namesOf([outer])).toEqual(["@scope/outer", "deeper", "inside"]);
		const [found] = shippedPackages([outer], `${modules}/bundler`);
		expect(found).toMatchObject({
			texts: ["Licence of @scope/outer"],
			notices: ["Copyright 2001 A. Person"],
		});
	});

	test("what the bundler wrote itself is its own; our own files are nobody else's", () => {
		install("bundler", "", { "left-away": "1" });
		expect(namesOf(["\0bundler/runtime.js", `${folder}/src/main.ts`])).toEqual(["bundler"]);
	});

	test.each([
		["/a/node_modules/b/c.js", "/a/node_modules/b"],
		["/a/node_modules/@s/b/c/d.js", "/a/node_modules/@s/b"],
		["/a/node_modules/b/node_modules/c/d.js", "/a/node_modules/b/node_modules/c"],
		["C:\\a\\node_modules\\b\\c.js", "C:/a/node_modules/b"],
		["/a/src/b.ts", undefined],
	])("the package of %s is %s", (file, folderOfIt) => {
		expect(packageFolder(file)).toBe(folderOfIt);
	});
});
