import { describe, expect, test } from "vitest";
import { readPaste, readTyped } from "../../../src/core/edit/readPaste.ts";
import type { NewText } from "../../../src/core/edit/withTexts.ts";
import type { Workbook } from "../../../src/core/workbook.ts";

const records = { header: ["date", "births", "kits_used"], rows: [["2027-02-28", "6", "1"]] };
const unit = {
	header: ["key", "value"],
	rows: [
		["plan_start", "2027-03-01"],
		["births_per_day", "6.5"],
	],
};
const workbook: Workbook = { tables: { "records.csv": records, "unit.csv": unit } };
const register = (...rows: readonly (readonly string[])[]): NewText[] =>
	rows.flatMap((cells, row) =>
		cells.map((text, at) => ({ row: row + 1, column: records.header[at] ?? "", text })),
	);
const textsOf = (read: { texts: readonly NewText[] }) => read.texts.map(({ text }) => text);

test.each([
	["date", "28/02/2027", "2027-02-28"],
	["date", "03/01/2027", "03/01/2027"],
	["date", "2027-03-05", "2027-03-05"],
	["births", "7", "7"],
	["births", "seven", "seven"],
	// What is not allowed in either form stays as it was typed.
	["births", "6,5", "6,5"],
	// So does what may mean two things, although only one of them is allowed.
	["births", "1,000", "1,000"],
	["births", " 1,250 ", " 1,250 "],
])("typed under %s, %s becomes %s", (column, text, kept) => {
	expect(readTyped(workbook, "records.csv", [{ row: 1, column, text }])).toEqual([
		{ row: 1, column, text: kept },
	]);
});

test("a typed number with a comma stays as it was typed, because it is understood", () => {
	const typed = [{ row: 1, column: "value", text: "6,5" }];
	expect(readTyped(workbook, "unit.csv", typed)).toEqual(typed);
});

test("of several typed texts each is taken that can be, unless something is left to ask", () => {
	const [births, date] = [
		{ row: 1, column: "births", text: "seven" },
		{ row: 1, column: "date", text: "28/02/2027" },
	];
	expect(readTyped(workbook, "records.csv", [births, date])).toEqual([
		births,
		{ ...date, text: "2027-02-28" },
	]);
	const lots = [
		{ row: 0, column: "made_on", text: "28/02/2027" },
		{ row: 0, column: "quantity", text: "1.400" },
	];
	expect(readTyped({ tables: {} }, "lots.csv", lots)).toEqual(lots);
});

test("texts of a file that is none of the format's stay as they are", () => {
	const texts = [{ row: 0, column: "date", text: "28/02/2027" }];
	const other = { tables: { ...workbook.tables, "other.csv": { header: ["date"], rows: [] } } };
	expect(readPaste(other, "other.csv", texts)).toEqual({ texts, questions: [], rewritten: [] });
	expect(readTyped(other, "other.csv", texts)).toEqual(texts);
});

describe("a paste is a block of its own", () => {
	test("a year's register with days first is read without a question, because one day tells", () => {
		const days = Array.from({ length: 371 }, (_, at) =>
			new Date(Date.UTC(2026, 0, 1 + at)).toISOString().slice(0, 10),
		);
		const given = days.map((day) => [day.split("-").reverse().join("/"), "7", ""]);
		const read = readPaste(workbook, "records.csv", register(...given));
		expect(read.questions).toEqual([]);
		expect(textsOf(read).filter((_, at) => at % 3 === 0)).toEqual(days);
		expect(read.rewritten).toHaveLength(371);
	});

	test("twelve days of two readings are one question, at the line they will stand in", () => {
		const given = register(["03/01/2027", "7"], ["04/01/2027", "5"]);
		const asked = readPaste(workbook, "records.csv", given);
		expect(asked.questions).toMatchObject([
			{ about: "dates", text: "03/01/2027", place: { file: "records.csv", line: 3 } },
		]);
		expect(textsOf(asked)).toEqual(given.map(({ text }) => text));
		const read = readPaste(workbook, "records.csv", given, { dates: "day-first" });
		expect(textsOf(read)).toEqual(["2027-01-03", "7", "2027-01-04", "5"]);
	});

	test("what stands in the sheet already is no witness", () => {
		const lots = { header: ["item", "quantity"], rows: [["Soap", "0.5"]] };
		const items = { header: ["item", "pack_size", "pack_price"], rows: [["Soap", "", "2,50"]] };
		const read = readPaste({ tables: { "lots.csv": lots } }, "lots.csv", [
			{ row: 1, column: "quantity", text: "1.400" },
		]);
		expect(read.questions).toMatchObject([{ about: "numbers", text: "1.400" }]);
		const into = readPaste({ tables: { "items.csv": items } }, "items.csv", [
			{ row: 0, column: "pack_size", text: "1.400" },
		]);
		expect(into.questions).toMatchObject([{ about: "numbers", text: "1.400" }]);
	});

	test("a year of two digits goes by the plan's", () => {
		const read = readPaste(workbook, "records.csv", register(["28/02/27", "7"]));
		expect(textsOf(read)).toEqual(["2027-02-28", "7"]);
		const plan = (day: string) => {
			const rows = [
				["plan_days", "7"],
				[" plan_start", day],
			];
			const book = { tables: { ...workbook.tables, "unit.csv": { ...unit, rows } } };
			return textsOf(readPaste(book, "records.csv", register(["28/02/27", "7"])));
		};
		expect(plan(" 1960-03-01 ")).toEqual(["1927-02-28", "7"]);
		expect(plan("soon")).toEqual(["28/02/27", "7"]);
	});

	test("a setting is read by its key, which was not pasted", () => {
		const read = readPaste(workbook, "unit.csv", [{ row: 1, column: "value", text: "1.400,5" }]);
		expect(textsOf(read)).toEqual(["1400.5"]);
	});

	test("words and notes stay as they are", () => {
		const given = register(["soon", "7", "1.400"]);
		expect(textsOf(readPaste(workbook, "records.csv", given))).toEqual(["soon", "7", "1.400"]);
	});
});
