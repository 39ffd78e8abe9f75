import { existsSync, globSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "..");
const documents = globSync("{*.md,{docs,sample-csv,tests}/**/*.md}", { cwd: root });
/** In a tag or in brackets; where to on this disk, without the place within it. */
const LINK = /\]\(([^)#\s]+)[^)]*\)|(?:src|href)="([^"#]+)/g;
/** In it brackets are a program's. */
const CODE = /`[^`\n]*`/g;
const MOST_BYTES_OF_A_PICTURE = 120_000;

const linksOf = (document: string) =>
	[...readFileSync(join(root, document), "utf8").replace(CODE, "").matchAll(LINK)]
		.map(([, inBrackets, inTag]) => inBrackets ?? inTag ?? "")
		.filter((target) => !/^[a-z]+:/.test(target));

test("every document is reached, and leads only to what is there", () => {
	expect(documents.length).toBeGreaterThan(15);
	const links = documents.flatMap((document) =>
		linksOf(document).map((target) => join(dirname(document), target)),
	);
	expect(links.length).toBeGreaterThan(30);
	expect(links.filter((target) => !existsSync(join(root, target)))).toEqual([]);
	const manual = documents.filter((document) => document.startsWith("docs/"));
	expect(manual.filter((document) => !links.includes(document))).toEqual([]);
});

test("every picture is shown by the README, and is small", () => {
	const pictures = globSync("docs/pictures/*", { cwd: root });
	expect(pictures.length).toBeGreaterThan(4);
	const shown = linksOf("README.md");
	for (const picture of pictures) {
		expect(shown).toContain(picture);
		expect(statSync(join(root, picture)).size, picture).toBeLessThanOrEqual(
			MOST_BYTES_OF_A_PICTURE,
		);
	}
});

test("every command that a document names is there", () => {
	const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
	const named = documents.flatMap((document) =>
		[...readFileSync(join(root, document), "utf8").matchAll(/npm run ([a-z:-]+)/g)].map(
			([, name = ""]) => name,
		),
	);
	expect(named.length).toBeGreaterThan(20);
	expect([...new Set(named)].filter((name) => !(name in scripts))).toEqual([]);
});
