import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { hashOf } from "../../src/build/keptFiles.ts";
import { languagesOnStick } from "../../src/build/stick/languagesOnStick.ts";
import { programOf } from "../../src/build/stick/programOf.ts";
import { type Files, megabytes, sizeOf, stickFiles } from "../../src/build/stick/stickFiles.ts";
import { wordsOnStick } from "../../src/build/stick/wordsOnStick.ts";
import { zipFiles } from "../../src/io/zipFiles.ts";
import { catalogueOf } from "../../src/messages/catalogueOf.ts";
import { folderOf } from "../../src/messages/languages.ts";
import { readZip } from "../io/readZip.ts";

const root = join(import.meta.dirname, "../..");
/** Names that Windows keeps for devices, whatever follows the point. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;
/** What FAT32, exFAT and Windows take in a name; no space or point at its end. */
const SAFE = /^[A-Za-z0-9 ._-]*[A-Za-z0-9_-]$/;
/** Windows opens no path beyond 260 characters; a folder in a user's downloads takes up to about 100 (estimate). */
const LONGEST_PATH = 150;

describe("the folder for a memory stick", () => {
	let files: Files;
	beforeAll(async () => {
		if (!existsSync(join(root, "dist/index.html")))
			throw new Error("The site is not built: run npm run build before these tests.");
		const parts = {
			site: join(root, "dist"),
			workbook: join(root, "sample-csv"),
			version: "0.1.0",
		};
		files = await stickFiles(parts);
	});
	const text = (path: string) => strFromU8(files[path] ?? new Uint8Array());

	test("has names that every stick and every system takes", () => {
		const paths = Object.keys(files);
		expect(paths.length).toBeGreaterThan(10);
		for (const path of paths) {
			expect(path.length, path).toBeLessThan(LONGEST_PATH);
			for (const name of path.split("/")) {
				expect(name).toMatch(SAFE);
				expect(name).not.toMatch(RESERVED);
			}
		}
		expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length);
	});

	test("has at its top only what a person opens or reads", () => {
		const top = Object.keys(files).filter((path) => !path.includes("/"));
		const built = languagesOnStick([]).filter((code) =>
			existsSync(join(root, "dist", folderOf(code), "index.html")),
		);
		const expected = built.flatMap((code) => {
			const { openFile, readMeFile, demoFile } = wordsOnStick[code];
			return [openFile, readMeFile, demoFile];
		});
		expect(expected.slice(0, 3)).toEqual([
			"Open Basinbook.html",
			"READ ME.txt",
			"demo workbook.zip",
		]);
		expect(top.sort()).toEqual(["LICENCES.txt", ...expected].sort());
	});

	test("has a workbook beside the program that reads without a problem", () => {
		const { workbook, problems } = readZip(files["demo workbook.zip"] ?? new Uint8Array());
		expect(problems).toEqual([]);
		expect(workbook.tables["unit.csv"]?.rows.length).toBeGreaterThan(10);
	});

	test("says what to do with Windows line ends, and how large it is", () => {
		const readMe = text("READ ME.txt");
		expect(readMe.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
		expect(readMe.split("\r\n").length).toBeGreaterThan(15);
		expect(readMe).toContain(`takes ${megabytes(sizeOf(files), "en")}`);
		expect(readMe).toContain(`zip of it ${megabytes(zipFiles(files).length, "en")}`);
		for (const path of Object.keys(files).filter((name) => /^[^/]*\.(html|zip|txt)$/.test(name)))
			if (/^(Open|LICENCES|demo)/.test(path)) expect(readMe).toContain(path);
	});

	test.each([
		["READ ME.txt", "program/index.html", "en"],
		["LISEZ-MOI.txt", "program/fr/index.html", "fr"],
	])("%s names the buttons as %s writes them", (readMe, page, language) => {
		// Where only one language is built, there is nothing of the other.
		expect(readMe in files).toBe(page in files);
		for (const button of ["Open files", "Save workbook"]) {
			const words = catalogueOf(language).get(button) ?? button;
			if (readMe in files) expect(text(readMe)).toContain(words);
			if (page in files) expect(text(page)).toContain(`>${words}<`);
		}
	});

	test("comes out of its zip as it went in, and the same files give the same zip", () => {
		const zip = zipFiles(files);
		const out = unzipSync(zip);
		expect(Object.keys(out)).toEqual(Object.keys(files).sort());
		for (const [path, content] of Object.entries(out))
			expect(Buffer.compare(content, files[path] ?? new Uint8Array()), path).toBe(0);
		const again = zipFiles(Object.fromEntries(Object.entries(files).reverse()));
		expect(Buffer.compare(again, zip)).toBe(0);
	});

	test("carries the site as it was built, and the licences where they are looked for", () => {
		for (const file of ["index.html", "workbook.js", "guide.html", "licences.txt"])
			expect(files[`program/${file}`]?.length, file).toBeGreaterThan(100);
		expect(text("LICENCES.txt").replaceAll("\r\n", "\n")).toBe(text("program/licences.txt"));
	});

	test("leads to the site of each language that is built, and says what to do in it", async () => {
		const site = mkdtempSync(join(tmpdir(), "basinbook site "));
		for (const folder of ["", "fr/"])
			cpSync(join(root, "dist"), join(site, folder), {
				recursive: true,
				filter: (path) => !path.startsWith(join(root, "dist/fr")),
			});
		const both = await stickFiles({ site, workbook: join(root, "sample-csv"), version: "0.1.0" });
		rmSync(site, { recursive: true });
		const textOf = (path: string) => strFromU8(both[path] ?? new Uint8Array());
		expect(textOf("Open Basinbook.html")).toMatch(/lang="en".*href=".\/program\/index.html"/s);
		expect(textOf("Ouvrir Basinbook.html")).toMatch(
			/lang="fr".*href=".\/program\/fr\/index.html"/s,
		);
		expect(textOf("LISEZ-MOI.txt")).toContain(`occupe ${megabytes(sizeOf(both), "fr")}`);
		expect(Object.keys(both)).toContain("program/fr/workbook.js");
	});
});

test("a language that nobody has reviewed comes along only where it is asked for", () => {
	const noneRead = (code: string) => (code === "fr" ? "not reviewed" : "reviewed");
	expect(languagesOnStick([])).toContain("fr");
	expect(languagesOnStick([], noneRead)).not.toContain("fr");
	expect(languagesOnStick(["fr"], noneRead)).toContain("fr");
	expect(() => languagesOnStick(["xx"])).toThrow("No language of the site: xx. There are en, fr");
});

test("a language that stays behind is on no list, and what is kept offline follows", () => {
	const site = mkdtempSync(join(tmpdir(), "basinbook site "));
	const list = (code: string) =>
		`<li data-language="${code}">\n<a href="./${code}/index.html"></a></li>`;
	const page = `<ul>${list("en")}${list("fr")}</ul>`;
	const write = (path: string, content: string) => {
		mkdirSync(dirname(join(site, path)), { recursive: true });
		writeFileSync(join(site, path), content);
	};
	write("index.html", page);
	write("fr/index.html", page);
	write("serviceWorker.js", `"${hashOf(Buffer.from(page))}"`);
	const all = programOf(site, ["en", "fr"]);
	const english = programOf(site, ["en"]);
	rmSync(site, { recursive: true });
	expect(Object.keys(all).sort()).toEqual(["fr/index.html", "index.html", "serviceWorker.js"]);
	expect(strFromU8(all["index.html"] as Uint8Array)).toBe(page);
	expect(Object.keys(english).sort()).toEqual(["index.html", "serviceWorker.js"]);
	const left = `<ul>${list("en")}</ul>`;
	expect(strFromU8(english["index.html"] as Uint8Array)).toBe(left);
	expect(strFromU8(english["serviceWorker.js"] as Uint8Array)).toBe(
		`"${hashOf(Buffer.from(left))}"`,
	);
});

test.each([
	[1, "en", "0.1 MB"],
	[1_400_000, "en", "1.4 MB"],
	[1_400_001, "fr", "1,5\u00a0Mo"],
] as const)("%d bytes are said as at most what they take, %s", (size, language, said) => {
	expect(megabytes(size, language)).toBe(said);
});
