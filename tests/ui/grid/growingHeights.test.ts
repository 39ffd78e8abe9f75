import { describe, expect, test } from "vitest";
import { calculation, derive } from "../../../src/core/calculation.ts";
import { rowOnDemand } from "../../../src/core/rowOnDemand.ts";
import { sheet } from "../../../src/core/sheet.ts";
import { textColumn } from "../../../src/core/sheets/textColumn.ts";
import { definition } from "../../../src/core/source.ts";
import { arrangedGrid } from "../../../src/ui/grid/arrangedGrid.ts";
import { computedGrid } from "../../../src/ui/grid/computedGrid.ts";
import type { GridModel } from "../../../src/ui/grid/gridModel.ts";
import { rowsWhenAsked } from "../../../src/ui/grid/library/rowsWhenAsked.ts";

const said = sheet({
	file: "said.csv",
	title: "Said",
	about: "",
	columns: { words: textColumn({ label: "Words", help: "" }) },
});
const ROWS = 100;
const LONG = 80;

/** A sheet of a hundred rows, one of them long, that notes which have been worked out. */
function longSheet() {
	const worked: number[] = [];
	const rows = Array.from({ length: ROWS }, (_, row) =>
		rowOnDemand(said, () => {
			worked.push(row);
			const text = row === LONG ? "a text that is much longer than the others ".repeat(3) : "short";
			return { words: derive({ ...one, compute: () => text }, {}) };
		}),
	);
	return { worked, table: { sheet: said, rows } };
}

const one = calculation<object, string>({
	key: "said",
	label: "Words",
	unit: "",
	formula: "",
	source: definition,
	inputs: {},
	example: { inputs: {}, result: "", within: 0 },
	compute: () => "",
});

function measured(model: GridModel): GridModel {
	while (model.measureOn?.());
	return model;
}

describe("a long sheet that the plan fills in", () => {
	test("stands when its first rows are worked out", () => {
		const { worked, table } = longSheet();
		computedGrid(table);
		expect(worked).toEqual(Array.from({ length: 60 }, (_, row) => row));
	});

	test("a long row has the height of the others until it has been looked at", () => {
		const model = computedGrid(longSheet().table);
		expect(model.rowHeight(LONG)).toBe(model.rowHeight(0));
		measured(model);
		expect(model.rowHeight(LONG)).toBeGreaterThan(model.rowHeight(0));
		expect(model.rowHeight(ROWS - 1)).toBe(model.rowHeight(0));
	});

	test("in another order too", () => {
		const model = arrangedGrid(computedGrid(longSheet().table), [3, LONG], "");
		measured(model);
		expect(model.rowHeight(1)).toBeGreaterThan(model.rowHeight(0));
	});

	test("a short one is known at once", () => {
		const { sheet: its, rows } = longSheet().table;
		expect(computedGrid({ sheet: its, rows: rows.slice(0, 60) }).measureOn).toBeUndefined();
	});
});

describe("rows for the library", () => {
	test("each is filled in when it is first looked at, and once", () => {
		const { worked, table } = longSheet();
		const model = computedGrid(table);
		worked.length = 0;
		const { data } = rowsWhenAsked(() => model);
		expect(data).toHaveLength(ROWS);
		expect(worked).toEqual([]);
		expect(data[90]).toEqual(["short"]);
		expect(data[90]).toBe(data[90]);
		expect(data.slice(70, 72)).toEqual([["short"], ["short"]]);
		expect(worked).toEqual([90, 70, 71]);
		expect(data[ROWS]).toBeUndefined();
	});

	test("another model has other rows", () => {
		const { table } = longSheet();
		let model = computedGrid(table);
		const { data, refill } = rowsWhenAsked(() => model);
		expect(data[0]).toEqual(["short"]);
		model = computedGrid({ sheet: said, rows: table.rows.slice(LONG) });
		refill();
		expect(data).toHaveLength(ROWS - LONG);
		expect(data[0]?.[0]).toContain("much longer");
	});
});
