import { expect, test } from "vitest";
import { tablesIn } from "../../../src/core/edit/tablesIn.ts";

const sound = { header: ["kit"], rows: [["A"], []] };

test.each([
	["nothing", undefined],
	["null", null],
	["no tables", {}],
	["tables that are none", { tables: null }],
])("out of a storage with %s comes no table, and none is damaged", (_what, kept) => {
	expect(tablesIn(kept)).toEqual({ tables: {}, damaged: [] });
});

test.each([
	["null", null],
	["a text", "kits"],
	["no header", { rows: [] }],
	["a header that is no list", { header: "kit", rows: [] }],
	["a header with a number", { header: ["kit", 1], rows: [] }],
	["no rows", { header: ["kit"] }],
	["rows that are no list", { header: ["kit"], rows: "A" }],
	["a row that is no list", { header: ["kit"], rows: [["A"], "B"] }],
	["a cell that is no text", { header: ["kit"], rows: [["A"], ["B", null]] }],
])("a table is damaged where it is %s, and named; the others are kept", (_what, damaged) => {
	expect(tablesIn({ tables: { "kits.csv": sound, "uses.csv": damaged } })).toEqual({
		tables: { "kits.csv": sound },
		damaged: ["uses.csv"],
	});
});

test.each([
	["as they are", [1, 3], { lines: [1, 3] }],
	["left out where there are none", undefined, {}],
	["left out where they are no list", { length: 2 }, {}],
	["left out where one is 0", [2, 0], {}],
	["left out where one is no whole number", [2, 2.5], {}],
	["left out where one is a text", [2, "3"], {}],
])("line numbers are %s", (_what, lines, kept) => {
	const { tables } = tablesIn({ tables: { "kits.csv": { ...sound, lines, more: "gone" } } });
	expect(tables["kits.csv"]).toStrictEqual({ ...sound, ...kept });
});
