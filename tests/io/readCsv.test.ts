import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LONGEST_CELL, MOST_ROWS } from "../../src/io/csvProblems.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { writeCsv } from "../../src/io/writeCsv.ts";

const read = (text: string) => readCsv("births.csv", text);

describe("reading what others write", () => {
	const plain = [
		["date", "births"],
		["2027-03-01", "6"],
		["2027-03-02", "7"],
	];
	test.each([
		["comma", "date,births\n2027-03-01,6\n2027-03-02,7\n", plain],
		["semicolon", "date;births\n2027-03-01;6\n2027-03-02;7\n", plain],
		["tab", "date\tbirths\n2027-03-01\t6\n2027-03-02\t7\n", plain],
		["no line end at the end", "date,births\n2027-03-01,6\n2027-03-02,7", plain],
		["CRLF", "date,births\r\n2027-03-01,6\r\n2027-03-02,7\r\n", plain],
		["CR", "date,births\r2027-03-01,6\r2027-03-02,7\r", plain],
		["CRLF, then LF", "date,births\r\n2027-03-01,6\n2027-03-02,7\n", plain],
		["LF, then CRLF", "date,births\n2027-03-01,6\r\n2027-03-02,7\r\n", plain],
		["byte-order mark", "\ufeffdate,births\n2027-03-01,6\n2027-03-02,7\n", plain],
		["byte-order mark before a quote", '\ufeff"date",births\n2027-03-01,6\n2027-03-02,7\n', plain],
		[
			"everything in quotes, CRLF",
			'"date","births"\r\n"2027-03-01","6"\r\n"2027-03-02","7"\r\n',
			plain,
		],
		[
			"decimal comma kept",
			"date;births\n2027-03-01;6,5\n",
			[
				["date", "births"],
				["2027-03-01", "6,5"],
			],
		],
		[
			"more commas in the data than separators",
			"date;note\nx;a,b,c,d\n",
			[
				["date", "note"],
				["x", "a,b,c,d"],
			],
		],
		[
			"separator inside a quoted header",
			'"a;b;c",d\n1,2\n',
			[
				["a;b;c", "d"],
				["1", "2"],
			],
		],
		["ragged rows", "a,b,c\n1\n1,2,3,4\n", [["a", "b", "c"], ["1"], ["1", "2", "3", "4"]]],
		["blank line in between and at the end", "a,b\n\n1,2\n\n", [["a", "b"], [], ["1", "2"], []]],
		["blank lines, CRLF", "a,b\r\n\r\n1,2\r\n", [["a", "b"], [], ["1", "2"]]],
		["one column", 'a\n1\n""\n', [["a"], ["1"], [""]]],
		["doubled quotes", 'a\n"5"" tube"\n', [["a"], ['5" tube']]],
		[
			"a quote inside an unquoted cell",
			'a,b\n5" tube,x\n',
			[
				["a", "b"],
				['5" tube', "x"],
			],
		],
		["line breaks of all kinds in quotes", 'a\n"x\ny\r\nz\rw"\n', [["a"], ["x\ny\r\nz\rw"]]],
		["a CR before a closing quote stays", 'a\r\n"x\r"\r\n', [["a"], ["x\r"]]],
		[
			"nothing is a number or a date",
			"a,b,c\n007,1e3,TRUE\n",
			[
				["a", "b", "c"],
				["007", "1e3", "TRUE"],
			],
		],
		[
			"spaces stay",
			"a,b\n x , y\n",
			[
				["a", "b"],
				[" x ", " y"],
			],
		],
		["a minus written plainly", "a\n-1\n", [["a"], ["-1"]]],
		["an apostrophe before a word", "a\n'tis\n", [["a"], ["'tis"]]],
		["an empty file", "", [[]]],
		["only a byte-order mark", "\ufeff", [[]]],
		["only a header", "a,b", [["a", "b"]]],
	])("%s", (_what, text, expected) => {
		const { table, problems } = read(text);
		expect([table.header, ...table.rows]).toEqual(expected);
		expect(problems).toEqual([]);
	});

	test.each([
		["plain", "a\n1\n2\n", [2, 3]],
		["blank lines count", "a\n\n1\n", [2, 3]],
		["a quoted break counts", 'a\n"x\ny"\n2\n', [2, 4]],
		["a quoted break in the header counts", '"a\nb"\n1\n', [3]],
		["quoted breaks of all kinds count, CRLF", 'a\r\n"x\r\ny\nz\rw"\r\n2\r\n', [2, 6]],
		["CR", "a\r1\r2\r", [2, 3]],
	])("the file line of each row: %s", (_what, text, lines) => {
		expect(read(text).table.lines).toEqual(lines);
	});
});

describe("what is wrong with a file", () => {
	test("an unclosed quote names the line where it opens, and keeps the text", () => {
		const { table, problems } = read(
			'date,births,note\n2027-03-01,6,"x\ny"\n2027-03-02,7,"lost\n2027-03-03,8,\n',
		);
		expect(problems).toMatchObject([
			{ code: "unclosed-quote", weight: "error", file: "births.csv", line: 4 },
		]);
		expect(table.rows.at(-1)).toEqual(["2027-03-02", "7", '"lost\n2027-03-03,8,\n']);
	});

	test("a quote that opens on a later line of its row", () => {
		expect(read('a,b\n"x\ny","z\n').problems).toMatchObject([{ code: "unclosed-quote", line: 3 }]);
	});

	test("text after a closing quote", () => {
		const { table, problems } = read('a,b\n"x"y,1\n');
		expect(problems[0]).toMatchObject({ line: 2, weight: "error" });
		expect(table.rows).toEqual([['"x"y', "1"]]);
	});

	test("a cell of 10 MB is a problem with its place, and is kept", () => {
		const long = "x".repeat(10_000_000);
		const { table, problems } = read(`date,births,note\n2027-03-01,6,\n2027-03-02,7,${long}\n`);
		expect(problems).toMatchObject([
			{ code: "long-cell", file: "births.csv", line: 3, column: "note", weight: "error" },
		]);
		expect(problems[0]?.received.length).toBeLessThan(200);
		expect(table.rows[1]?.[2] === long).toBe(true);
		expect(read(writeCsv(table)).table.rows[1]?.[2] === long).toBe(true);
	});

	test("the limit of a cell is exact", () => {
		expect(read(`a\n${"x".repeat(LONGEST_CELL)}\n`).problems).toEqual([]);
		expect(read(`a\n${"x".repeat(LONGEST_CELL + 1)}\n`).problems).toHaveLength(1);
	});

	test("the limit of rows is exact", () => {
		expect(read(`a\n${"1\n".repeat(MOST_ROWS)}`).table.rows).toHaveLength(MOST_ROWS);
		const over = read(`a\n${"1\n".repeat(MOST_ROWS + 1)}`);
		expect(over.problems).toMatchObject([{ code: "too-many-rows", weight: "error" }]);
		expect(over.table.rows).toEqual([]);
	});
});

describe("writing", () => {
	test.each([
		["=1+1", "'=1+1"],
		["+1+1", "'+1+1"],
		["-1+1", "'-1+1"],
		["- drained", "'- drained"],
		["@SUM(A1)", "'@SUM(A1)"],
		["\t=1", '"\'\t=1"'],
		["\rx", '"\'\rx"'],
		[" =1", "' =1"],
		["＝1", "'＝1"],
		["'=1", "''=1"],
		["'-5", "''-5"],
		["-5", "-5"],
		["+3", "+3"],
		["-0,5", '"-0,5"'],
		["-1.5e3", "-1.5e3"],
		["'tis", "'tis"],
		["a;b", '"a;b"'],
		["", '""'],
	])("%j is written %s", (text, written) => {
		expect(writeCsv({ header: ["a"], rows: [[text]] })).toBe(`a\r\n${written}\r\n`);
	});

	test("columns, rows and blank rows", () => {
		const rows = [["1", "", "x y"], [], ["", "2"]];
		expect(writeCsv({ header: ["a", "b", "c"], rows })).toBe('a,b,c\r\n1,,x y\r\n\r\n"",2\r\n');
	});

	const nasty = fc.string({
		unit: fc.constantFrom(
			'"',
			"'",
			",",
			";",
			"\t",
			"\r",
			"\n",
			"=",
			"-",
			"@",
			"+",
			"1",
			"a",
			" ",
			"\ufeff",
			"\0",
		),
	});
	const row = fc.array(fc.oneof(nasty, fc.string({ unit: "binary" })), { maxLength: 4 });

	test("what is written reads back as it was, whatever the text", () => {
		fc.assert(
			fc.property(row, fc.array(row), (header, rows) => {
				const { table, problems } = read(writeCsv({ header, rows }));
				expect({ header: table.header, rows: table.rows }).toEqual({ header, rows });
				expect(problems).toEqual([]);
			}),
			{ numRuns: 2000 },
		);
	});

	test("no written cell begins with what a spreadsheet runs", () => {
		fc.assert(
			fc.property(nasty, (text) => {
				const cell = writeCsv({ header: ["a"], rows: [[text]] })
					.slice(3)
					.replace(/^"/, "");
				const isNumber = /^[+-][\d.,]+(e[+-]?\d+)?["\r]/.test(cell);
				if (text !== "" && !isNumber) expect(cell).not.toMatch(/^[=+\-@\t]/);
			}),
			{ numRuns: 2000 },
		);
	});

	test("reading never throws and loses no letter of what it is given", () => {
		fc.assert(
			fc.property(nasty, (text) => {
				const { table } = read(text);
				const letters = (s: string) => s.replace(/[^a1=+@]/g, "");
				expect(letters([table.header, ...table.rows].flat().join(""))).toBe(letters(text));
			}),
			{ numRuns: 2000 },
		);
	});
});
