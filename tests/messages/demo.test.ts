import { describe, expect, test } from "vitest";
import { planFiles } from "../../src/cli/planFiles.ts";
import type { TextTable } from "../../src/core/workbook.ts";
import { readFolder } from "../../src/io/readFolder.ts";
import { cataloguesThere } from "../../src/messages/cataloguesThere.ts";
import { type DemoWords, demoIn } from "../../src/messages/demo/demoIn.ts";
import { demoTables } from "../../src/messages/demo/demoTables.ts";
import { demoTexts } from "../../src/messages/demo/demoTexts.ts";
import { demoWordsOf, missingOfDemo } from "../../src/messages/demo/demoWordsOf.ts";
import { translations } from "../../src/messages/languages.ts";

const english = await readFolder("sample-csv");

/** The demo's workbook with the words of a language in the place of its texts. */
function demoWith(words: DemoWords): typeof english {
	const tables: Record<string, TextTable> = { ...english.workbook.tables };
	for (const [file, table] of Object.entries(tables))
		tables[file] = demoIn(file, table, (kind, text) => words[kind]?.[text] || text);
	return { ...english, workbook: { ...english.workbook, tables } };
}

/** Words nobody speaks: each text under its kind. */
const invented = Object.fromEntries(
	Object.entries(demoWordsOf("xx")).map(([kind, texts]) => [
		kind,
		Object.fromEntries(Object.keys(texts).map((text, at) => [text, `${kind} ${at} ~`])),
	]),
);

test("what stays in every language are codes, marks, numbers and names of people", () => {
	const left = new Set<string>();
	const own = Object.values(demoWith(invented).workbook.tables).flatMap(({ rows }) => rows.flat());
	for (const text of own.flatMap((cell) => cell.split(";")))
		if (/[a-z]/i.test(text) && !text.endsWith("~")) left.add(text);
	const names = [...left].filter(
		(text) => !/^[a-z]+(_[a-z\d]+)*$|^[A-Z]+(-?\d+)+$|^mL$/.test(text),
	);
	expect(names.sort()).toEqual(["Ama", "Esi", "Kofi"]);
	expect(english.problems).toEqual([]);
});

test("every place of texts is one of the demo, and holds some", () => {
	const tables = demoTables();
	const places = Object.values(demoTexts).flat();
	const wrong = places.filter((place) => {
		const [file = "", column = ""] = place.split(": ");
		return !tables[file]?.header.includes(column);
	});
	expect(wrong).toEqual([]);
	expect(Object.values(demoWordsOf("xx")).every((texts) => Object.keys(texts).length > 0)).toBe(
		true,
	);
});

test("a language of which nothing is written lacks words for every text", () => {
	expect(missingOfDemo(demoWordsOf("xx")).length).toBeGreaterThan(70);
	expect(missingOfDemo(demoWordsOf("xx"))).toContain("steps: Look for damage and drain");
});

test.each(translations)("the demo is whole in %s", (language) => {
	expect(missingOfDemo(demoWordsOf(language))).toEqual([]);
});

describe.each(cataloguesThere())("the demo in %s", (language) => {
	const words = demoWordsOf(language);

	test("gives no two texts of one kind the same words", () => {
		for (const [kind, texts] of Object.entries(words)) {
			const given = Object.values(texts).filter((text) => text !== "");
			expect(new Set(given).size, kind).toBe(given.length);
		}
	});

	test("has the plan of the English one, under its own names", () => {
		const own = planFiles(demoWith(words), false);
		const wanted = planFiles(english, false);
		expect(own.problems.length).toBe(wanted.problems.length);
		const names = Object.values(words)
			.flatMap((texts) => Object.entries(texts).filter(([, text]) => text !== ""))
			.sort(([a], [b]) => b.length - a.length);
		for (const [file, text] of Object.entries(wanted.files)) {
			const inOwn = names.reduce((all, [name, word]) => all.replaceAll(name, word), text);
			expect(bare(own.files[file]), file).toEqual(bare(inOwn));
		}
	});
});

/** Lines without the quotes that only some names need. */
const bare = (csv = "") => csv.replaceAll('"', "").split("\n");
