import { describe, expect, test } from "vitest";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import { arrangedRows } from "../../../src/ui/grid/arrangedRows.ts";
import { asInFile } from "../../../src/ui/grid/arrangement.ts";
import { computedGrid } from "../../../src/ui/grid/computedGrid.ts";
import type { GridModel } from "../../../src/ui/grid/gridModel.ts";
import { ShownSheet } from "../../../src/ui/grid/shownSheet.ts";
import { typedGrid } from "../../../src/ui/grid/typedGrid.ts";
import { demoWorkbook } from "../../../src/ui/state/demoWorkbook.ts";
import { Store } from "../../../src/ui/state/store.ts";

const LOTS = "lots.csv";
const header = ["item", "lot", "quantity", "made_on", "received_on", "arrives_on", "expires_on"];
const lots = [
	["Gauze", "L10", "0.5", "", "", "", "2028-01-01"],
	["Éponge", "L2", "0,25", "", "", "", "2027-12-31"],
	["Bleach", "L1", "", "", "", "", ""],
	["gauze, large", "L3", "about 5", "", "", "", "soon"],
	["Soap", "L4", "1 000,5", "", "", "", "2027-04-09"],
];
const storeOf = (rows: readonly (readonly string[])[]) =>
	new Store({ tables: { ...demoWorkbook().tables, [LOTS]: { header, rows } } });
const sheetOf = (store: Store): GridModel => typedGrid(store.state, LOTS);
const column = (model: GridModel | undefined, key: string): string[] => {
	const at = model?.columns.findIndex((one) => one.key === key) ?? -1;
	return Array.from({ length: model?.rowCount ?? 0 }, (_, row) => model?.cell(row, at).text ?? "");
};
const sorted = (by: string, descending = false) => {
	const sheet = new ShownSheet();
	sheet.take(sheetOf(storeOf(lots)), false);
	sheet.arrange({ ...asInFile, by, descending });
	return column(sheet.model, by);
};

describe("sorting", () => {
	test.each([
		["numbers by their number", "quantity", ["0,25", "0.5", "1 000,5", "about 5", "", ""]],
		[
			"dates by their day",
			"expires_on",
			["2027-04-09", "2027-12-31", "2028-01-01", "soon", "", ""],
		],
		[
			"words as in a list of names",
			"item",
			["Bleach", "Éponge", "Gauze", "gauze, large", "Soap", ""],
		],
		["numbers within words by their number", "lot", ["L1", "L2", "L3", "L4", "L10", ""]],
	])("%s; what is not understood after them, blanks last", (_, by, wanted) => {
		expect(sorted(by)).toEqual(wanted);
	});

	test("descending turns the order and still leaves blanks last", () => {
		expect(sorted("quantity", true)).toEqual(["1 000,5", "0.5", "0,25", "about 5", "", ""]);
	});

	test("rows that are alike keep the order of the file", () => {
		const alike = typedGrid(storeOf(lots.map((row) => ["same", ...row.slice(1)])).state, LOTS);
		const rows = arrangedRows(alike, { ...asInFile, by: "item", descending: true });
		expect(rows).toEqual([0, 1, 2, 3, 4, 5]);
	});

	test("a computed sheet goes by its values, not by how they are written", () => {
		const table = storeOf(lots).state.plan.tables["day-plan.csv"];
		if (!table) throw new Error("no plan");
		const model = computedGrid(table);
		const rows = arrangedRows(model, { ...asInFile, by: "date", descending: true });
		// "Wed 3 Mar" stands before "Tue 2 Mar" and "Mon 1 Mar": the days backwards.
		expect(rows).toEqual([6, 5, 4, 3, 2, 1, 0]);
		expect(arrangedRows(model, { ...asInFile, contains: "2027-03-03" })).toEqual([2]);
	});
});

describe("choosing rows", () => {
	const shown = (contains: string, among = "") => {
		const sheet = new ShownSheet();
		sheet.take(sheetOf(storeOf(lots)), false);
		sheet.arrange({ ...asInFile, contains, among });
		return sheet;
	};

	test("capitals, accents and the gap between thousands do not matter", () => {
		expect(column(shown("EPONGE").model, "lot")).toEqual(["L2", ""]);
		expect(column(shown("GAUZE").model, "lot")).toEqual(["L10", "L3", ""]);
		expect(column(shown("1000,5", "quantity").model, "lot")).toEqual(["L4", ""]);
	});

	test("one column, or any", () => {
		expect(column(shown("2028").model, "lot")).toEqual(["L10", ""]);
		expect(column(shown("2028", "item").model, "lot")).toEqual([""]);
	});

	test("says how many of how many, and the numbers in the margin stay those of the file", () => {
		const sheet = shown("gauze");
		expect(sheet.words).toBe("2 of 5 rows shown");
		expect([0, 1, 2].map((row) => sheet.model?.rowName?.(row))).toEqual(["2", "5", "+"]);
		expect(sheet.model?.name).toBe("Lots in the store: 2 of 5 rows shown");
		sheet.arrange(asInFile);
		expect(sheet.words).toBe("");
		expect(sheet.model).toBe(sheet.sheet);
	});
});

describe("editing what is shown", () => {
	test("a row that is seen leads to its own row, and rows past the end are new ones", () => {
		const sheet = new ShownSheet();
		sheet.take(sheetOf(storeOf(lots)), false);
		sheet.arrange({ by: "item", descending: true, among: "", contains: "gauze" });
		expect([0, 1, 2, 3].map((row) => sheet.rowOf(row))).toEqual([3, 0, 5, 6]);
		expect([sheet.seenAt(0), sheet.seenAt(1)]).toEqual([1, undefined]);
	});

	test("an edited row stays where it is, a new one stands last; any other change arranges anew", () => {
		const store = storeOf(lots);
		const sheet = new ShownSheet();
		sheet.take(sheetOf(store), false);
		sheet.arrange({ ...asInFile, by: "item", contains: "gauze" });
		store.edit(
			withTexts(store.state.workbook, LOTS, [
				{ row: 0, column: "item", text: "Zinc tape" },
				{ row: 5, column: "item", text: "Cord ties" },
			]),
		);
		sheet.take(sheetOf(store), true);
		expect(column(sheet.model, "item")).toEqual(["Zinc tape", "gauze, large", "Cord ties", ""]);
		expect(sheet.rowOf(2)).toBe(5);
		sheet.take(sheetOf(store), false);
		expect(column(sheet.model, "item")).toEqual(["gauze, large", ""]);
		store.undo();
		sheet.take(sheetOf(store), false);
		expect(column(sheet.model, "item")).toEqual(["Gauze", "gauze, large", ""]);
	});
});
