import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { numberIn, totalOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const madeWith = (water: string) => plan(unitWith({ solution_water: water, heat_kw: 3 }));
const litresOf = (water: string, of: "expected" | "set_aside") => {
	const made = madeWith(water);
	const rounds = numberIn(totalOf(made, "rounds"), of) as number;
	return { rounds, litres: numberIn(totalOf(made, "boiled_litres"), of) as number };
};

test("boiled water for the solution, 5.5 L a preparation, is planned with the rinse water", () => {
	for (const of of ["expected", "set_aside"] as const) {
		const { rounds, litres } = litresOf("boiled", of);
		expectWithin(litres - litresOf("tap", of).litres, 5.5 * rounds, 1e-9, "L");
	}
});

test("each round's fire boils it too, and it is cool when the round begins", () => {
	const fires = (water: string) => contentOf(madeWith(water), "boiling.csv", "litres");
	const litres = (water: string) => fires(water).reduce((sum, [each]) => sum + Number(each), 0);
	expectWithin(litres("boiled") - litres("tap"), 7 * 3 * 5.5, 1e-6, "L");
});

/** Litres of a day's fires, by the round for which they are; pieces are boiled in 5 L. */
const litresByRound = (settings: Record<string, string | number>) => {
	const made = plan(
		unitWith({ heat_kw: 3, plan_days: 1, kits_used_per_100_births: 10, ...settings }),
	);
	return contentOf(made, "boiling.csv", "round", "litres")
		.map(([round, litres]) => `${round} ${Number(litres).toFixed(1)}`)
		.sort();
};

test.each([
	["each round", {}, ["afternoon 35.5", "morning 35.5", "night 35.5"]],
	["once a day", { solution_made: "each_day" }, ["afternoon 30.0", "morning 35.5", "night 30.0"]],
	[
		"once a day, and again when it is too old",
		{ solution_made: "each_day", solution_life_hours: 8 },
		["afternoon 30.0", "morning 35.5", "night 35.5"],
	],
	[
		"each round, in a unit that boils its pieces and wipes with 2 L of chlorine",
		{ method: "boiling", wipe_solution_litres: 2 },
		["afternoon 2.0", "afternoon 5.0", "morning 2.0", "morning 5.0", "night 2.0", "night 5.0"],
	],
	[
		"once a day, in such a unit",
		{ method: "boiling", wipe_solution_litres: 2, solution_made: "each_day" },
		["afternoon 5.0", "morning 2.0", "morning 5.0", "night 5.0"],
	],
	[
		"each round, in a unit that boils its pieces and wipes with no chlorine",
		{ method: "boiling" },
		["afternoon 5.0", "morning 5.0", "night 5.0"],
	],
])("made %s, its water is boiled for the rounds that mix", (_what, settings, rounds) => {
	expect(litresByRound({ solution_water: "boiled", ...settings })).toEqual(rounds);
});

test.each(["expected", "set_aside"] as const)("the fuel of a day, %s, boils it too", (of) => {
	const fuelOf = (litres: number, water = "boiled") => {
		const made = plan(
			unitWith({
				solution_water: water,
				heat_kw: 3,
				boil_hold_minutes: 0,
				boil_for: "after_use",
				soak_fill_litres: litres,
				wipe_solution_litres: 0,
			}),
		);
		return contentOf(made, "water.csv", `fuel_${of}`).map(([fuel]) => Number(fuel));
	};
	const [tap, three, six] = [fuelOf(3, "tap"), fuelOf(3), fuelOf(6)].map(
		(fuel) => fuel[0] as number,
	);
	// Without holding, fuel goes by the litres.
	expectWithin(
		(six as number) - (tap as number),
		2 * ((three as number) - (tap as number)),
		1e-9,
		"kg",
	);
	expect(three).toBeGreaterThan(tap as number);
});

test("a kit that waits for its water waits for that of its solution too", () => {
	const turnaround = (water: string) =>
		columnOf(
			plan(
				unitWith({
					solution_water: water,
					heat_kw: 3,
					boil_for: "after_use",
					reprocessing: "after_each_use",
				}),
			),
			"levers.csv",
			"turnaround_minutes",
		)[0] as number;
	expect(turnaround("boiled")).toBeGreaterThan(turnaround("tap"));
});
