import { describe, expect, test } from "vitest";
import { problemsCsv } from "../../../src/io/computedCsv.ts";
import { LONGEST_CELL, MOST_CELLS, MOST_COLUMNS } from "../../../src/io/csvProblems.ts";
import { decode } from "../../../src/io/decode.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { readOrders } from "../../../src/io/readOrders.ts";
import { typedGrid } from "../../../src/ui/grid/typedGrid.ts";
import { Store } from "../../../src/ui/state/store.ts";
import { districtReader } from "../readers/districtReader.ts";
import { textBytes } from "../textBytes.ts";

const csv = (text: string) => readCsv("births.csv", text);
const codes = (problems: readonly { code: string; line: number | null }[]) =>
	problems.map(({ code, line }) => [code, line]);

describe("CSV", () => {
	test.each([
		["a header that ends in CR, rows in LF", "item\rgauze\nsoap\n"],
		["a header that ends in LF, rows in CR", "item\ngauze\rsoap\r"],
		["CRLF, then CR", 'item\r\n"gauze"\rsoap\r\n'],
	])("lines that end in different ways do not run together: %s", (_what, text) => {
		const { table, problems } = csv(text);
		expect(table).toMatchObject({ rows: [["gauze"], ["soap"]], lines: [2, 3] });
		expect(problems).toEqual([]);
	});

	test("a stray quote mark spoils its own cell and swallows no row", () => {
		const { table, problems } = csv('a,b\n"5" tube",1\n"x\ny"z,2\n3,4\n');
		expect(table.rows).toEqual([
			['"5" tube"', "1"],
			['"x\ny"z', "2"],
			["3", "4"],
		]);
		expect(codes(problems)).toEqual([
			["loose-quote", 2],
			["loose-quote", 3],
		]);
	});

	test("two stray quote marks in one row are one problem, and none of the next row", () => {
		const { table, problems } = csv('a,b\n"x"y,"z"w\n1,2\n');
		expect(table.rows[1]).toEqual(["1", "2"]);
		expect(codes(problems)).toEqual([["loose-quote", 2]]);
	});

	test("half a million stray quote marks before as many blanks are one cell, said so", () => {
		const { table, problems } = csv(`a\n"x${'" '.repeat(5e5)}${" ".repeat(5e5)}\n`);
		expect(table.rows[0]?.[0]).toHaveLength(1.5e6 + 2);
		expect(problems.map(({ code }) => code)).toEqual(["loose-quote", "long-cell"]);
	});

	test("too many columns or cells are refused before they fill the memory", () => {
		const columns = (n: number) => csv(Array.from({ length: n }, (_, i) => `c${i}`).join());
		expect(columns(MOST_COLUMNS).problems).toEqual([]);
		expect(codes(columns(MOST_COLUMNS + 1).problems)).toEqual([["too-many-columns", 1]]);
		expect(codes(csv(`a\n${",".repeat(MOST_CELLS + 1)}`).problems)).toEqual([["too-large", null]]);
		const { workbook, problems } = readFiles([
			{ name: "births.csv", bytes: textBytes(",".repeat(2000)) },
		]);
		expect(workbook.tables).toEqual({});
		expect(problems.map(({ code, weight }) => [code, weight])).toEqual([
			["too-many-columns", "error"],
		]);
	});

	test("a column keeps its values where its name stands with blanks around it", () => {
		const { workbook } = readFiles([
			{ name: "births.csv", bytes: textBytes("date, births , note\n2027-03-01,6,x\n") },
		]);
		const { state } = new Store(workbook);
		const grid = typedGrid(state, "births.csv");
		expect(grid.columns.map(({ key }) => key)).toEqual(["date", "births", "note"]);
		expect(grid.cell(0, 1).text).toBe("6");
	});

	test("a message never cuts a letter in two", () => {
		const { problems } = csv(`a,${"x".repeat(59)}👶👶\n,${"y".repeat(LONGEST_CELL + 1)}\n`);
		expect(problems).toHaveLength(1);
		expect(problems[0]?.message.isWellFormed()).toBe(true);
		const [long] = problemsCsv([
			{
				...(problems[0] as never as Parameters<typeof problemsCsv>[0][0]),
				message: "👶".repeat(5000),
			},
		]).split("…", 1);
		expect(long?.isWellFormed()).toBe(true);
	});
});

describe("encodings", () => {
	test.each(["utf16le", "big end first"])("UTF-16 without its mark is read: %s", (kind) => {
		const bytes = new Uint8Array(Buffer.from("date,births\n", "utf16le"));
		const given = kind === "utf16le" ? bytes : Uint8Array.of(0, ...bytes.subarray(0, -1));
		expect(decode("x.csv", given)).toEqual({ ok: true, text: "date,births\n" });
	});

	test("UTF-16 behind a UTF-8 mark is read as what it is", () => {
		const mark = Uint8Array.of(0xef, 0xbb, 0xbf);
		const text = Buffer.from("kit,kind\r\nK1,bag\r\n", "utf16le").swap16();
		const bytes = Uint8Array.from([...mark, ...text]);
		expect(decode("kits.csv", bytes)).toEqual({ ok: true, text: "kit,kind\r\nK1,bag\r\n" });
	});

	test.each(["\0-\0", "\0m\0,\0l\0", "m\0"])(
		"of a few bytes every other one 0 is no text: %j would be taken for UTF-16 once it is saved",
		(text) => {
			const given = readFiles([{ name: "births.csv", bytes: textBytes(text) }]);
			expect(given.workbook.tables).toEqual({});
			expect(codes(given.problems)).toContainEqual(["not-text", 1]);
		},
	);

	test.each(["a", "ab", "a\0bc", "\0\0"])("other few bytes are: %j", (text) => {
		expect(decode("births.csv", textBytes(text))).toEqual({ ok: true, text });
	});

	test("the line of a bad letter is right also after a replaced letter", () => {
		const bytes = Uint8Array.of(...textBytes("a\n\ufffd\nb\n"), 0xe9, 10);
		expect(decode("x.csv", bytes)).toMatchObject({ ok: true, advice: { line: 4 } });
	});

	test("two files that differ in one byte beyond UTF-8 are not the same order twice", () => {
		const files = [0xff, 0xfe].map((byte, i) => ({
			name: `${i}.csv`,
			bytes: Uint8Array.of(97, byte),
		}));
		const told = readOrders(files).problems.map(({ code, file }) => [code, file]);
		expect(told).toContainEqual(["read-as-windows-1252", "0.csv"]);
		expect(told).toContainEqual(["read-as-windows-1252", "1.csv"]);
		expect(told.map(([code]) => code)).not.toContain("same-order-twice");
	});
});

test.each([
	["a name", "item;name\nGauze swab;undefined"],
	["the header", '\ufeffNaN\n""'],
])(
	"a word of the machine that the file itself has is the file's, in a wide encoding too: %s",
	(_, text) => {
		expect(() => districtReader.check(Buffer.from(text, "utf16le"))).not.toThrow();
	},
);
