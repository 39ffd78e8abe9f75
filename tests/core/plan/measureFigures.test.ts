import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { calculationsBehind, rowsOf } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

test.each([
	[
		"for the solution",
		{ solution_water: "boiled" },
		"boiled_solution_litres",
		["preparations", "L"],
	],
	["for nothing", { method: "autoclave" }, "no_boiled_litres", [""]],
])("water that is boiled %s is told in litres, and what of", (_, settings, key, of) => {
	const [day] = rowsOf(plan(unitWith({ plan_days: 1, ...settings })), "day-plan.csv");
	const behind = [...calculationsBehind(day?.boiled_litres_expected as never)];
	const found = behind.filter((each) => each.key === key);
	expect(
		found.map(({ label, unit, inputs }) => [
			label.slice(0, 12),
			unit,
			Object.values(inputs).map((input) => input.unit),
		]),
	).toEqual([["Boiled water", "L", of]]);
});
