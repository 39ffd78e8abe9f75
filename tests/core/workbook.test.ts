import { expect, test } from "vitest";
import { lineOf, type Workbook, withCell } from "../../src/core/workbook.ts";

const workbook: Workbook = {
	tables: {
		"a.csv": { header: ["x", "y"], rows: [["1", "2"], ["3"]] },
		"b.csv": { header: ["z"], rows: [] },
	},
};

test("an edit makes a new workbook and leaves the old one", () => {
	const edited = withCell(workbook, "a.csv", 0, "y", "9");
	expect(edited.tables["a.csv"]?.rows).toEqual([["1", "9"], ["3"]]);
	expect(workbook.tables["a.csv"]?.rows[0]).toEqual(["1", "2"]);
	expect(edited.tables["b.csv"]).toBe(workbook.tables["b.csv"]);
});

test.each([
	[
		"a short row is filled up",
		1,
		"y",
		[
			["1", "2"],
			["3", "9"],
		],
	],
	["rows are made where there are none yet", 3, "x", [["1", "2"], ["3"], [], ["9", ""]]],
])("%s", (_what, row, column, rows) => {
	expect(withCell(workbook, "a.csv", row, column, "9").tables["a.csv"]?.rows).toEqual(rows);
});

test("a column and a file that do not exist yet are made", () => {
	expect(withCell(workbook, "a.csv", 0, "new", "9").tables["a.csv"]?.header).toEqual([
		"x",
		"y",
		"new",
	]);
	expect(withCell(workbook, "c.csv", 0, "new", "9").tables["c.csv"]).toEqual({
		header: ["new"],
		rows: [["9"]],
	});
});

test("the first row stands in line 2 unless the file says otherwise", () => {
	expect(lineOf({ header: [], rows: [] }, 0)).toBe(2);
	expect(lineOf({ header: [], rows: [], lines: [7] }, 0)).toBe(7);
});
