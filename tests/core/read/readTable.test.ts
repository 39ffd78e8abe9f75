import { describe, expect, test } from "vitest";
import { readTable } from "../../../src/core/read/readTable.ts";
import { birthsSheet } from "../../../src/core/sheets/births.ts";
import { hoursSheet } from "../../../src/core/sheets/hours.ts";
import { kindsSheet } from "../../../src/core/sheets/kinds.ts";
import { lotsSheet } from "../../../src/core/sheets/lots.ts";
import { mixingSheet } from "../../../src/core/sheets/mixing.ts";
import { tableOf } from "../smallUnit.ts";

const births = (text: string) => readTable(birthsSheet, tableOf(text));
const codes = (problems: readonly { code: string }[]) => problems.map((p) => p.code);

describe("the header", () => {
	test.each([
		["all columns", "date,births,note", []],
		["another order", "note,date,births", []],
		["no note", "date,births", ["missing-column"]],
		["no date, no note", "births", ["missing-column", "missing-column"]],
		["a column too many", "date,births,note,weather", ["unknown-column"]],
		["a column twice", "date,births,note,births", ["doubled-column"]],
		["capitals", "Date,births,note", ["missing-column", "unknown-column"]],
	])("%s", (_what, header, expected) => {
		expect(codes(births(header).problems)).toEqual(expected);
	});

	test("spaces around a column's name are none of it", () => {
		const rows = [["4", "2027-03-01", ""]];
		const found = readTable(birthsSheet, { header: [" births ", "date\t", " note"], rows });
		expect(found.problems).toEqual([]);
		expect(found.rows[0]?.value).toMatchObject({ date: "2027-03-01", births: 4 });
	});

	test("what is missing, and what was found, is said whole", () => {
		expect(births("date,births").problems).toMatchObject([
			{ code: "missing-column", line: 1, column: "note", received: "date, births" },
		]);
		expect(births("date,births,note,x").problems).toMatchObject([
			{
				code: "unknown-column",
				line: 1,
				column: "x",
				received: "x",
				allowed: "date, births, note",
			},
		]);
		expect(readTable(birthsSheet, undefined).problems).toMatchObject([
			{ code: "missing-file", file: "births.csv", line: null, column: "", received: "" },
		]);
		expect(readTable(birthsSheet, { header: [], rows: [] }).problems).toMatchObject([
			{ code: "empty-file", file: "births.csv", line: 1, column: "", received: "" },
		]);
	});

	test("an empty file is told apart from a missing column", () => {
		expect(codes(readTable(birthsSheet, { header: [], rows: [] }).problems)).toEqual([
			"empty-file",
		]);
	});

	test("a missing column is an error, one too many is advice", () => {
		const weights = births("date,births,weather").problems.map((p) => [p.column, p.weight]);
		expect(weights).toEqual([
			["note", "error"],
			["weather", "advice"],
		]);
	});

	test("an absent file is a problem, an absent optional file is not", () => {
		expect(codes(readTable(birthsSheet, undefined).problems)).toEqual(["missing-file"]);
		expect(readTable(hoursSheet, undefined)).toMatchObject({
			problems: [],
			absent: true,
			rows: [],
		});
	});

	test("a column added to the format later may be absent", () => {
		const header = Object.keys(mixingSheet.columns).filter((key) => key !== "remark");
		expect(readTable(mixingSheet, { header, rows: [] }).problems).toEqual([]);
	});

	test("the columns' order does not matter to the rows", () => {
		const { rows } = births("note,births,date\nholiday,3,2027-03-01");
		expect(rows).toEqual([{ line: 2, value: { date: "2027-03-01", births: 3, note: "holiday" } }]);
	});

	test("of a doubled column the first is used", () => {
		expect(births("date,births,note,births\n2027-03-01,3,,9").rows[0]?.value.births).toBe(3);
	});
});

describe("the rows", () => {
	test("a bad cell makes its row bad; good rows stand", () => {
		const read = births("date,births,note\n2027-03-01,two,\n2027-03-02,4,");
		expect(read.rows.map((row) => row.line)).toEqual([3]);
		expect(read.badRows).toHaveLength(1);
		expect(read.badRows[0]).toMatchObject({ line: 2, value: { date: "2027-03-01", note: "" } });
		expect(read.badRows[0]?.problems[0]).toMatchObject({
			code: "bad-cell",
			file: "births.csv",
			line: 2,
			column: "births",
			received: "two",
			allowed: "a number from 0 to 500, or blank",
			message: 'Births: "two" was found; allowed is a number from 0 to 500, or blank.',
		});
	});

	test("every bad cell of a row is named", () => {
		const { badRows } = births("date,births,note\n2027-02-30,-1,");
		expect(badRows[0]?.problems.map((p) => p.column)).toEqual(["date", "births"]);
	});

	test("rows of blanks are skipped and still counted as lines", () => {
		const { rows, badRows } = births("date,births,note\n,,\n  , ,\n2027-03-01,4,");
		expect(badRows).toEqual([]);
		expect(rows.map((row) => row.line)).toEqual([4]);
	});

	test("the file's own line numbers are used where they are known", () => {
		const table = {
			header: ["date", "births", "note"],
			rows: [["2027-03-01", "x", ""]],
			lines: [17],
		};
		expect(readTable(birthsSheet, table).badRows[0]?.problems[0]?.line).toBe(17);
	});

	test("a short row is a row with blanks", () => {
		expect(births("date,births,note\n2027-03-01").rows[0]?.value).toEqual({
			date: "2027-03-01",
			births: null,
			note: "",
		});
	});

	test("a row that is too long is named, and the rest of it stands", () => {
		const { rows, problems } = births("date,births,note\n2027-03-01,4,,more");
		expect(rows).toHaveLength(1);
		expect(problems).toMatchObject([
			{ code: "too-many-cells", weight: "advice", line: 2, received: "more" },
		]);
	});

	test("blank cells beyond the header are nobody's problem", () => {
		expect(births("date,births,note\n2027-03-01,4,,,").problems).toEqual([]);
	});

	test("a message quotes at most 60 characters, the problem keeps them all", () => {
		const { badRows } = births(`date,births,note\n2027-03-01,${"9".repeat(5000)},`);
		const found = badRows[0]?.problems[0];
		expect(found?.received).toHaveLength(5000);
		expect(found?.message.length).toBeLessThan(200);
	});
});

describe("doubled rows", () => {
	test("both of two rows for the same day are refused, naming both lines", () => {
		const { rows, badRows } = births(
			"date,births,note\n2027-03-01,4,\n2027-03-02,4,\n2027-03-01,5,",
		);
		expect(rows.map((row) => row.line)).toEqual([3]);
		expect(badRows.map((row) => row.line)).toEqual([2, 4]);
		expect(badRows[0]?.problems[0]).toMatchObject({ code: "doubled-row", received: "2027-03-01" });
		expect(badRows[0]?.problems[0]?.message).toContain("lines 2 and 4");
	});

	test("rows are doubles only where they agree in all their naming columns", () => {
		const kinds = readTable(
			kindsSheet,
			tableOf("kind,piece,count\nset,mask,1\nset,valve,1\nother,mask,1"),
		);
		expect(kinds.badRows).toEqual([]);
		const lots = readTable(
			lotsSheet,
			tableOf("item,lot,quantity,made_on,received_on,arrives_on,expires_on\na,1,5,,,,\na,1,6,,,,"),
		);
		expect(lots.badRows).toHaveLength(2);
	});

	test("names are compared without the spaces around them", () => {
		expect(
			readTable(kindsSheet, tableOf("kind,piece,count\nset,mask,1\nset, mask ,2")).badRows,
		).toHaveLength(2);
	});
});
