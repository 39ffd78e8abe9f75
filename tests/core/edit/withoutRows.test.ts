import { expect, test } from "vitest";
import { withEmptyRow } from "../../../src/core/edit/withEmptyRow.ts";
import { withoutRows } from "../../../src/core/edit/withoutRows.ts";
import { lineOf, type TextTable, type Workbook } from "../../../src/core/workbook.ts";

/** A ragged row, a column of nobody's, and a row whose cell runs over three lines. */
const table: TextTable = {
	header: ["kit", "note", "own"],
	rows: [["K1"], ["K2", "a\nb\nc", "x"], ["K3", "", "y", "beyond"], ["K4", "", ""]],
	lines: [2, 3, 6, 7],
};
const workbook: Workbook = { tables: { "kits.csv": table } };
const kits = ({ tables }: Workbook) => tables["kits.csv"] as TextTable;
const linesOf = (after: TextTable) => after.rows.map((_, row) => lineOf(after, row));

test("an empty row goes in before the row, and the lines after it move down", () => {
	const after = kits(withEmptyRow(workbook, "kits.csv", 2));
	expect(after.rows).toEqual([
		["K1"],
		["K2", "a\nb\nc", "x"],
		["", "", ""],
		["K3", "", "y", "beyond"],
		["K4", "", ""],
	]);
	expect(linesOf(after)).toEqual([2, 3, 6, 7, 8]);
	expect(after.header).toEqual(table.header);
});

test("rows of a table without line numbers go without any, and those after a gap of lines keep it", () => {
	const { header, rows } = table;
	const plain = { tables: { "kits.csv": { header, rows } } };
	expect(kits(withoutRows(plain, "kits.csv", new Set([0])))).toStrictEqual({
		header,
		rows: rows.slice(1),
	});
	const apart = { tables: { "kits.csv": { header, rows, lines: [2, 4, 9, 10] } } };
	expect(kits(withoutRows(apart, "kits.csv", new Set([1]))).lines).toEqual([2, 4, 5]);
	expect(kits(withoutRows(apart, "kits.csv", new Set([0, 1]))).lines).toEqual([2, 3]);
	expect(kits(withoutRows(apart, "kits.csv", new Set([3]))).lines).toEqual([2, 4, 9]);
});

test("an empty row can go in at the end, and into a table without line numbers of its own", () => {
	expect(kits(withEmptyRow(workbook, "kits.csv", 4))).toStrictEqual({
		header: table.header,
		rows: [...table.rows, ["", "", ""]],
	});
	const { header, rows } = table;
	const plain = kits(withEmptyRow({ tables: { "kits.csv": { header, rows } } }, "kits.csv", 0));
	expect(plain).toStrictEqual({ header, rows: [["", "", ""], ...rows] });
	expect(linesOf(plain)).toEqual([2, 3, 4, 5, 6]);
});

test("deleted rows are gone together with all their lines; the others stay as they were", () => {
	const after = kits(withoutRows(workbook, "kits.csv", new Set([1, 3])));
	expect(after.rows).toEqual([["K1"], ["K3", "", "y", "beyond"]]);
	expect(linesOf(after)).toEqual([2, 3]);
	expect(kits(workbook)).toBe(table);
	expect(withoutRows(workbook, "kits.csv", new Set([9]))).toBe(workbook);
});
