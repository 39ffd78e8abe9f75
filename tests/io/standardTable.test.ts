import fc from "fast-check";
import { expect, test } from "vitest";
import { readNumber } from "../../src/core/values/number.ts";
import { standardTable } from "../../src/io/standardTable.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { readZip } from "./readZip.ts";

const written = (file: string, column: string, text: string) =>
	standardTable(file, { header: ["x", column], rows: [["0,5", text]] }).rows[0]?.[1];

test.each([
	["births.csv", "births", "6,5", "6.5"],
	["births.csv", "births", " 6,5 ", "6.5"],
	["births.csv", "births", "6.50", "6.50"],
	["births.csv", "births", "about 6,5", "about 6,5"],
	["births.csv", "births", "1,000", "1,000"],
	["births.csv", "births", "", ""],
	["births.csv", "note", "6,5", "6,5"],
	["births.csv", "toString", "6,5", "6,5"],
	["lots.csv", "quantity", "12 500,1234567", "12500.1234567"],
	["rounds.csv", "start", "7:00", "07:00"],
	["rounds.csv", "start", "17:00", "17:00"],
	["rounds.csv", "start", "7:0", "7:0"],
	["kits.csv", "status", "En service", "in_service"],
	["checks.csv", "clean", "oui", "yes"],
	["kits.csv", "status", "somewhere", "somewhere"],
	["other.csv", "births", "6,5", "6,5"],
])("%s, %s: %j is written %j", (file, column, text, expected) => {
	expect(written(file, column, text)).toBe(expected);
});

test("a value of the settings is of its setting's kind", () => {
	const rows = [
		["births_per_day", "6,5"],
		["unit_name", "Ward 6,5"],
		["reprocessing", "after each use"],
		["constructor", "6,5"],
	];
	expect(standardTable("unit.csv", { header: ["key", "value"], rows }).rows).toEqual([
		["births_per_day", "6.5"],
		["unit_name", "Ward 6,5"],
		["reprocessing", "after_each_use"],
		["constructor", "6,5"],
	]);
});

test("the value of a number never changes", () => {
	const digits = fc.string({
		unit: fc.constantFrom("0", "1", "9", ",", ".", " ", "-", "e"),
		maxLength: 8,
	});
	fc.assert(
		fc.property(digits, (text) => {
			const after = written("births.csv", "births", text) ?? "";
			expect(readNumber(after)).toBe(readNumber(text));
		}),
		{ numRuns: 5000 },
	);
});

test("a saved workbook has decimal points", () => {
	const table = { header: ["date", "births", "note"], rows: [["2027-03-01", "6,5", "6,5"]] };
	const { workbook } = readZip(zipWorkbook({ tables: { "births.csv": table } }));
	expect(workbook.tables["births.csv"]?.rows).toEqual([["2027-03-01", "6.5", "6,5"]]);
});
