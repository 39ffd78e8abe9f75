import { describe, expect, test } from "vitest";
import { readTable } from "../../src/core/read/readTable.ts";
import { birthsSheet } from "../../src/core/sheets/births.ts";
import { readFiles } from "../../src/io/readFiles.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";

const file = (name: string, contents: string | number[]) => ({
	name,
	bytes:
		typeof contents === "string" ? new TextEncoder().encode(contents) : new Uint8Array(contents),
});
const text = (words: string) => [...new TextEncoder().encode(words)];
const good = file("births.csv", "date,births,note\n2027-03-01,6,\n");
const codesOf = (...files: ReturnType<typeof file>[]) =>
	readFiles(files).problems.map(({ code, file: where, weight, line }) => [
		code,
		where,
		weight,
		line,
	]);

describe("files as people hand them over", () => {
	test.each([
		["a path in front", "C:\\stick\\unit/births.csv"],
		["capitals", "BIRTHS.CSV"],
	])("%s", (_what, name) => {
		const { workbook, problems } = readFiles([{ ...good, name }]);
		expect(workbook.tables["births.csv"]?.rows).toEqual([["2027-03-01", "6", ""]]);
		expect(problems).toEqual([]);
	});

	test.each([
		[
			"an unknown file",
			file("shopping.csv", "a\n"),
			["unknown-file", "shopping.csv", "advice", null],
		],
		["a result", file("day-plan.csv", "a\n"), ["result-file", "", "advice", null]],
		["a result to come", file("order.csv", "a\n"), ["result-file", "", "advice", null]],
		[
			"no JSON",
			file("datapackage.json", "{"),
			["strange-description", "datapackage.json", "advice", null],
		],
		[
			"JSON nested too deeply",
			file("datapackage.json", "[".repeat(200_000)),
			["strange-description", "datapackage.json", "advice", null],
		],
		[
			"JSON that is null",
			file("datapackage.json", "null"),
			["strange-description", "datapackage.json", "advice", null],
		],
		[
			"another letter code",
			file("rounds.csv", [...text("start,label\n07:00,"), 0xe9, 0x0a]),
			["read-as-windows-1252", "rounds.csv", "advice", 2],
		],
		[
			"no text",
			file("rounds.csv", [0x61, 0x0a, 0xe9, 0x00]),
			["not-text", "rounds.csv", "error", 2],
		],
		["a zip that is none", file("old.zip", "PK"), ["not-a-zip", "old.zip", "error", null]],
		[
			"two of one name",
			file("x/births.csv", "date\n"),
			["doubled-file", "births.csv", "error", null],
		],
	])("%s is named, and the good files are read", (_what, other, expected) => {
		expect(codesOf(good, file("hours.csv", "hour,share\n0,1\n"), other)).toEqual([expected]);
		const { workbook } = readFiles([good, file("hours.csv", "hour,share\n0,1\n"), other]);
		expect(workbook.tables["hours.csv"]?.rows).toEqual([["0", "1"]]);
	});

	test("a file that is no text is not taken for an empty one", () => {
		expect(readFiles([good, file("rounds.csv", [0xe9, 0])]).workbook.tables).not.toHaveProperty(
			"rounds.csv",
		);
	});

	test("a good description is passed over in silence", () => {
		expect(
			codesOf(
				good,
				file("datapackage.json", '{"basinbook_format": 3, "resources": [{"path": "births.csv"}]}'),
			),
		).toEqual([]);
	});

	test("a zip and a file beside it go together", () => {
		const zip = { name: "unit", bytes: zipWorkbook(readFiles([good]).workbook) };
		const { workbook, problems } = readFiles([zip, file("rounds.csv", "start,label\n07:00,\n")]);
		expect(Object.keys(workbook.tables).sort()).toEqual(["births.csv", "rounds.csv"]);
		expect(problems).toEqual([]);
	});

	test.each([
		["nothing", []],
		["only strange files", [file("letter.txt", "hello")]],
		["only a description", [file("datapackage.json", '{"resources": []}')]],
	])("%s: there is no workbook", (_what, files) => {
		expect(readFiles(files).problems).toContainEqual(
			expect.objectContaining({ code: "no-workbook", weight: "error" }),
		);
	});
});

describe("bad cells keep their line from the file to the problem", () => {
	test.each([
		["-1", "-1"],
		["1e9", "1e9"],
		["two", "two"],
		["=6", "=6"],
		["'=6", "=6"],
		["1,0,0", "1,0,0"],
		["NaN", "NaN"],
	])("births %s", (written, received) => {
		const text = `date;births;note\r\n2027-03-01;6,5;"two\r\nlines"\r\n\r\n2027-03-02;${written};\r\n`;
		const { workbook, problems } = readFiles([file("births.csv", text)]);
		expect(problems.map(({ code }) => code)).toEqual(["rewritten"]);
		const { rows, badRows } = readTable(birthsSheet, workbook.tables["births.csv"]);
		expect(rows).toMatchObject([
			{ line: 2, value: { date: "2027-03-01", births: 6.5, note: "two\r\nlines" } },
		]);
		expect(badRows.flatMap((row) => row.problems)).toMatchObject([
			{ file: "births.csv", line: 5, column: "births", received, weight: "error" },
		]);
	});

	test.each([
		["a wrong header", "day,births,note\n2027-03-01,6,\n", ["missing-column", "unknown-column"]],
		["an empty file", "", ["empty-file"]],
		["a header twice", "date,births,births,note\n2027-03-01,6,7,\n", ["doubled-column"]],
	])("%s", (_what, text, codes) => {
		const { workbook } = readFiles([file("births.csv", text)]);
		const { problems } = readTable(birthsSheet, workbook.tables["births.csv"]);
		expect(problems.map(({ code }) => code)).toEqual(codes);
		expect(problems.every(({ line }) => line === 1)).toBe(true);
	});
});
