import { expect, test } from "vitest";
import { unitNameIn } from "../../../src/core/sheets/unitNameIn.ts";

const named = (header: string[], ...rows: string[][]) =>
	unitNameIn({ tables: { "unit.csv": { header, rows } } });

test.each<[string, string[], string[][], string]>([
	[
		"as it was typed",
		["key", "value"],
		[
			["plan_days", "7"],
			["unit_name", "Ward 3"],
		],
		"Ward 3",
	],
	["without spaces around it", [" value ", "key "], [["  Ward 3 ", " unit_name "]], "Ward 3"],
	["blank where it is", ["key", "value"], [["unit_name", " "]], ""],
	["blank in a line that ends before it", ["key", "value"], [["unit_name"]], ""],
	["blank where no line has it", ["value", "key"], [["7"], ["7", "plan_days"]], ""],
	["blank where the file has no such column", ["setting", "value"], [["unit_name", "Ward 3"]], ""],
])("the unit's name is %s", (_what, header, rows, name) => {
	expect(named(header, ...rows)).toBe(name);
});

test("a workbook without settings has none", () => {
	expect(unitNameIn({ tables: {} })).toBe("");
});
