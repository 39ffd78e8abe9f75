import { expect, test } from "vitest";
import { lineOf, type Workbook, withTable } from "../../src/core/workbook.ts";

test("an edit makes a new workbook and leaves the old one and its other tables", () => {
	const before: Workbook = {
		tables: { "a.csv": { header: ["x"], rows: [["1"]] }, "b.csv": { header: ["z"], rows: [] } },
	};
	const after = withTable(before, "a.csv", { header: ["x"], rows: [["9"]] });
	expect(after.tables["a.csv"]?.rows).toEqual([["9"]]);
	expect(before.tables["a.csv"]?.rows).toEqual([["1"]]);
	expect(after.tables["b.csv"]).toBe(before.tables["b.csv"]);
});

test("the first row stands in line 2 unless the file says otherwise", () => {
	expect(lineOf({ header: [], rows: [] }, 0)).toBe(2);
	expect(lineOf({ header: [], rows: [], lines: [7] }, 0)).toBe(7);
});
