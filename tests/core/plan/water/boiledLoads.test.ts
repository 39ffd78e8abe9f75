import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf } from "../../contentOf.ts";
import { codesOf, rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

/** Whether each of four days knows how much is boiled; nobody can read the births of the third. */
function isKnown(boil_for: string, settings: Record<string, string> = {}): boolean[] {
	const births = { "births.csv": "date,births,note\n2027-03-03,two," };
	const made = plan(unitWith({ boil_for, plan_days: 4, ...settings }, births));
	return columnOf(made, "day-plan.csv", "boiled_litres_expected").map(
		(litres) => litres !== undefined,
	);
}

test.each([
	[
		"after_use",
		"each load that comes: what that day brings is not known",
		[true, true, false, false],
	],
	["every_round", "that day's rounds are not known", [true, true, false, false]],
	["standing", "what stands ready goes from day to day", [false, false, false, false]],
])("boiled for %s: %s", (boil_for, _, known) => {
	expect(isKnown(boil_for)).toEqual(known);
});

test("where no piece goes into chlorine nothing is rinsed, however it is boiled", () => {
	for (const boil_for of ["after_use", "every_round", "standing"]) {
		const made = plan(unitWith({ boil_for, method: "autoclave", plan_days: 1 }));
		expect(columnOf(made, "day-plan.csv", "boiled_buckets_set_aside")).toEqual([0]);
	}
});

test("where nobody can read when water is boiled, how much is not known", () => {
	const [day] = rowsOf(plan(unitWith({ boil_for: "sometimes", plan_days: 1 })), "day-plan.csv");
	const waits = [
		day?.boiled_litres_expected,
		day?.boiled_buckets_set_aside,
		// Nor which kits their water keeps from a round.
		day?.rounds_expected,
	].map(codesOf);
	expect(waits).toEqual([["bad-cell"], ["bad-cell"], ["bad-cell"]]);
	const fires = rowsOf(plan(unitWith({ boil_for: "sometimes", plan_days: 1 })), "boiling.csv");
	expect(new Set(fires.map((fire) => codesOf(fire.only_if).join()))).toEqual(new Set(["bad-cell"]));
});
