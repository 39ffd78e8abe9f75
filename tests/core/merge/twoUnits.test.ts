import { expect, test } from "vitest";
import { twoUnits } from "../../../src/core/merge/twoUnits.ts";
import { sheet } from "./copies.ts";

const named = (name: string) => sheet("unit.csv", "key,value", "plan_days,7", `unit_name,${name}`);

test("two units are told by both names, at the unit's name", () => {
	expect(twoUnits(named("Ward A"), named(" Ward B "))).toMatchObject({
		file: "unit.csv",
		line: null,
		column: "unit_name",
		weight: "advice",
		code: "two-units",
		received: "Ward B",
		allowed: "Ward A",
		message: expect.stringContaining("“Ward A” and “Ward B”"),
	});
});

// record.md: two copies of one workbook, single sheets among them.
test.each([
	["the same name", named(" Ward A")],
	["a blank name", named("")],
	["settings without a name", sheet("unit.csv", "key,value", "plan_days,7")],
	["a single sheet", sheet("uses.csv", "at,kit,what")],
	["settings without a header", sheet("unit.csv", "unit_name,Ward B")],
])("a copy with %s is of no other unit", (_what, other) => {
	expect(twoUnits(named("Ward A"), other)).toBeUndefined();
	expect(twoUnits(other, named("Ward A"))).toBeUndefined();
});

test("where the columns stand does not matter", () => {
	const turned = sheet("unit.csv", "note,value, key ", ",Ward B,unit_name");
	expect(twoUnits(named("Ward A"), turned)?.received).toBe("Ward B");
});
