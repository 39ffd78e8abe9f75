import { describe, expect, test } from "vitest";
import { readFiles } from "../../src/io/readFiles.ts";
import { textBytes } from "./textBytes.ts";

const births = { name: "births.csv", bytes: textBytes("date,births,note\n2027-03-01,6,\n") };
const read = (description: string) =>
	readFiles([births, { name: "datapackage.json", bytes: textBytes(description) }]);
const list = '{"resources": []';

describe("a description that cannot be meant is said to be strange, and the sheets are read", () => {
	test.each([
		["100,000 lists in each other", "[".repeat(100_000) + "]".repeat(100_000)],
		["100,000 lists that never end", `{"resources": ${"[".repeat(100_000)}`],
		["100,000 objects in each other", `${'{"a":'.repeat(100_000)}1${"}".repeat(100_000)}`],
		["closing and closing", "]}".repeat(100_000)],
		["a text of 50 MB", `{"resources": ["${"x".repeat(50_000_000)}"]}`],
		["a text that never ends", `"${'\\"'.repeat(499_000)}`],
		["a backslash at the end", '{"resources": ["\\'],
		["quote marks and nothing more", '"'.repeat(999_999)],
		["a list of resources that is inherited", '{"__proto__": {"resources": []}}'],
		["constructors", '{"constructor": {"prototype": {"resources": []}}}'],
		["the right key and then a wrong one again", `${list}, "resources": 7}`],
		["a number", "1e999"],
		["a text", '"resources"'],
		["a list", "[]"],
		["true", "true"],
		["nothing", ""],
		["a program", "process.exit()"],
		["two in one", `${list}}${list}}`],
		...[null, 7, "x", true, { length: 1 }].map((value) => [
			`resources ${JSON.stringify(value)}`,
			JSON.stringify({ resources: value }),
		]),
		...["null", '"2"', "0", "-1", "1.5", "[2]", "{}", "true", "1e999"].map((value) => [
			`edition ${value}`,
			`${list}, "basinbook_format": ${value}}`,
		]),
	])("%s", (_what, description) => {
		const { workbook, problems } = read(description ?? "");
		expect(problems).toMatchObject([{ code: "strange-description", weight: "advice" }]);
		expect(problems[0]?.message.length).toBeLessThan(300);
		expect(workbook.tables["births.csv"]?.rows).toEqual([["2027-03-01", "6", ""]]);
		expect(({} as { resources?: unknown }).resources).toBeUndefined();
	});
});

describe("a description with a list is enough, whatever else it says", () => {
	test.each([
		[
			"strange resources",
			'{"resources": [null, 7, "x", [[]], {"path": 5, "schema": {"fields": "no"}}]}',
		],
		[
			"paths that lead elsewhere",
			'{"resources": [{"path": "/etc/passwd"}, {"path": "https://example.org/x.csv"}]}',
		],
		[
			"keys of the language",
			'{"resources": [], "__proto__": {"polluted": true}, "constructor": 1, "toString": null}',
		],
		["the last of two", '{"resources": 7, "resources": []}'],
		["32 levels", `{"resources": ${"[".repeat(31)}${"]".repeat(31)}}`],
		["brackets in a text", `{"resources": ["${"[{".repeat(1000)}"]}`],
	])("%s", (_what, description) => {
		const { workbook, problems } = read(description);
		expect(problems).toMatchObject([{ code: "older-format" }]);
		expect(Object.keys(workbook.tables)).toEqual(["births.csv"]);
		expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
	});
});
