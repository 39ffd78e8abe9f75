import { expect, test } from "vitest";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import type { TextTable, Workbook } from "../../../src/core/workbook.ts";

const workbook: Workbook = {
	tables: { "a.csv": { header: ["x", "y"], rows: [["1", "2"], ["3"], ["4", "5", "beyond"]] } },
};
const edited = (row: number, column: string, file = "a.csv") =>
	withTexts(workbook, file, [{ row, column, text: "9" }]).tables[file];

test("a short row is filled up, and what stands beyond the header stays", () => {
	expect(edited(1, "y")?.rows[1]).toEqual(["3", "9"]);
	expect(edited(2, "x")?.rows[2]).toEqual(["9", "5", "beyond"]);
	expect(workbook.tables["a.csv"]?.rows[1]).toEqual(["3"]);
});

test("line numbers stay where no row is new; several cells of a row are one edit of it", () => {
	const { header, rows } = workbook.tables["a.csv"] as TextTable;
	const numbered = { tables: { "a.csv": { header, rows, lines: [2, 5, 6] } } };
	const linesAfter = (row: number) =>
		withTexts(numbered, "a.csv", [{ row, column: "x", text: "9" }]).tables["a.csv"]?.lines;
	expect(linesAfter(1)).toEqual([2, 5, 6]);
	expect(linesAfter(3)).toBeUndefined();
	expect(edited(1, "x")).toStrictEqual({ header, rows: [["1", "2"], ["9", ""], rows[2]] });
	const both = withTexts(workbook, "a.csv", [
		{ row: 2, column: "x", text: "7" },
		{ row: 2, column: "new", text: "8" },
		{ row: 2, column: "y", text: "9" },
		{ row: 3, column: "y", text: "6" },
		{ row: 3, column: "x", text: "5" },
	]);
	expect(both.tables["a.csv"]).toEqual({
		header: ["x", "y", "new"],
		rows: [["1", "2"], ["3"], ["7", "9", "8"], ["5", "6", ""]],
	});
	expect(rows[2]).toEqual(["4", "5", "beyond"]);
});

test("rows, columns and files that are not there yet are made", () => {
	expect(edited(4, "x")?.rows.slice(3)).toEqual([
		["", ""],
		["9", ""],
	]);
	expect(edited(0, "new")).toMatchObject({ header: ["x", "y", "new"] });
	expect(edited(0, "new")?.rows[0]).toEqual(["1", "2", "9"]);
	expect(edited(0, "new", "c.csv")).toEqual({ header: ["new"], rows: [["9"]] });
	// A sheet of the format begins with the columns it asks for.
	expect(edited(0, "births", "births.csv")).toEqual({
		header: ["date", "births", "note"],
		rows: [["", "9", ""]],
	});
});
