import { expect, test } from "vitest";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import type { Workbook } from "../../../src/core/workbook.ts";

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
