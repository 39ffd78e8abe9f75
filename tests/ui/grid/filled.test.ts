import { expect, test } from "vitest";
import { filled } from "../../../src/ui/grid/filled.ts";
import type { GridModel } from "../../../src/ui/grid/gridModel.ts";

/** Cells by their text; "=" begins one that is locked. A word shown for what was typed stands after "|". */
function modelOf(...rows: readonly string[][]): GridModel {
	return {
		name: "",
		columns: (rows[0] ?? []).map((key) => ({ key, label: "", unit: "", numeric: false, width: 1 })),
		rowCount: rows.length,
		headerHeight: 0,
		rowHeight: () => 0,
		cell(row, column) {
			const [raw = "", text = raw] = (rows[row]?.[column] ?? "").split("|");
			return { kind: text.startsWith("=") ? "computed" : "typed", text, raw };
		},
	};
}
const sheet = modelOf(
	["a", "in_use|in use", "=1"],
	["b", "", "=2"],
	["c", "away", "3"],
	["", "", ""],
);
const block = (top: number, left: number, bottom: number, right: number) => ({
	top,
	left,
	bottom,
	right,
});

test("the first cell of each column goes into the others of the block, as typed; locked cells stay", () => {
	expect(filled(sheet, block(0, 0, 2, 2), "down")).toEqual([
		{ row: 1, column: 0, text: "a" },
		{ row: 1, column: 1, text: "in_use" },
		{ row: 2, column: 0, text: "a" },
		{ row: 2, column: 1, text: "in_use" },
	]);
});

test("one row takes what stands above it, in every selected column", () => {
	expect(filled(sheet, block(3, 0, 3, 1), "down")).toEqual([
		{ row: 3, column: 0, text: "c" },
		{ row: 3, column: 1, text: "away" },
	]);
	expect(filled(sheet, block(0, 0, 0, 1), "down")).toEqual([]);
});

test("a blank is copied too, and a cell that holds the text already is left out", () => {
	expect(filled(sheet, block(1, 1, 3, 1), "down")).toEqual([{ row: 2, column: 1, text: "" }]);
});

test("to the right along a row, never out of a locked cell", () => {
	const days = modelOf(["=births", "5", "", "7", "=12"], ["=kits", "=1", "=2", "=3", "=6"]);
	expect(filled(days, block(0, 1, 1, 4), "right")).toEqual([
		{ row: 0, column: 2, text: "5" },
		{ row: 0, column: 3, text: "5" },
	]);
	expect(filled(days, block(0, 2, 0, 2), "right")).toEqual([{ row: 0, column: 2, text: "5" }]);
	expect(filled(days, block(0, 1, 0, 1), "right")).toEqual([]);
});
