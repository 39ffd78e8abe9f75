import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { codesOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const FIRST = "2027-03-01";
const sizes = { soak_capacity_kits: 2, boil_capacity_kits: 4, steam_capacity_kits: 5 };

function loadsOf(settings: Record<string, string | number>, ...treatments: string[]) {
	const lines = ["kind,piece,method,note", ...treatments].join("\n");
	const read = readWorkbook(unitWith({ ...sizes, ...settings }, { "treatments.csv": lines }));
	const { loads } = unitFigures(read, FIRST, FIRST);
	return valueIn(loads)?.map(({ method, kits }) => `${method} ${kits}`) ?? codesOf(loads);
}

test.each([
	["chlorine", [], ["chlorine 2"]],
	["boiling", [], ["boiling 4"]],
	["steam", [], ["steam 5"]],
	["autoclave", [], []],
	["chlorine", ["bag set,mask,boiling,"], ["chlorine 2", "boiling 4"]],
	["steam", ["bag set,mask,chlorine,"], ["chlorine 2", "steam 5"]],
])("all by %s, but %j: %j", (method, treatments, loads) => {
	expect(loadsOf({ method }, ...treatments)).toEqual(loads);
});

test("a size that nobody can read matters only where some kit goes that way", () => {
	expect(loadsOf({ boil_capacity_kits: "some" })).toEqual(["chlorine 2"]);
	expect(loadsOf({ boil_capacity_kits: "some", method: "boiling" })).toEqual(["bad-cell"]);
});
