import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { numberIn, rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const advised = (code: string, settings: Record<string, string | number>) =>
	plan(unitWith({ heat_kw: 3, plan_days: 1, ...settings })).problems.filter(
		(problem) => problem.code === code,
	);

test.each([
	["one kit in a load, 10 L in a bucket", { soak_capacity_kits: 1 }, ["bucket_fill_litres"]],
	["one kit in a load, 5 L in a bucket", { soak_capacity_kits: 1, bucket_fill_litres: 5 }, []],
	["three kits in a load", {}, []],
	[
		"one kit in a load, and nobody can read how full a bucket is",
		{ soak_capacity_kits: 1, bucket_fill_litres: "full" },
		[],
	],
])("smaller buckets: %s", (_what, settings, columns) => {
	const found = advised("buckets-for-one-kit", settings);
	expect(found).toMatchObject(
		columns.map((column) => ({
			weight: "advice",
			file: "unit.csv",
			column,
			received: "10 L",
			allowed: "for example 5 L",
		})),
	);
});

test.each([
	["every_round", "in_rounds", undefined],
	["standing", "in_rounds", undefined],
	["after_use", "in_rounds", "every_round"],
	["after_use", "after_each_use", "standing"],
])("boiled %s, %s: another way is offered: %s", (boil_for, reprocessing, offered) => {
	const [found] = advised("boiled-after-use", { boil_for, reprocessing });
	expect(found?.allowed).toBe(offered);
	if (offered)
		expect(found).toMatchObject({
			weight: "advice",
			file: "unit.csv",
			column: "boil_for",
			received: "after_use",
		});
});

test("a kit that waits for its water waits for heating, hold and cooling: 272 + 2 + 440 minutes", () => {
	const [found] = advised("boiled-after-use", { boil_for: "after_use" });
	expect(found?.message).toContain("less than 11.9 h before a round");
});

test("after each use a kit is ready that much later, or waits on for nothing where water stands ready", () => {
	const turnaround = (boil_for: string, method = "chlorine") =>
		valueIn(
			rowsOf(
				plan(
					unitWith({ heat_kw: 3, plan_days: 1, reprocessing: "after_each_use", boil_for, method }),
				),
				"levers.csv",
			)[0]?.turnaround_minutes,
		) as number;
	expect(turnaround("every_round")).toBe(110);
	expect(turnaround("standing")).toBe(110);
	expectWithin(turnaround("after_use"), 110 + 272.4 + 2 + 439.8, 1, "min");
	// Boiled pieces are not rinsed.
	expect(turnaround("after_use", "boiling")).toBe(turnaround("standing", "boiling"));
});

test("in rounds the round is as long as ever, and more needs find none ready", () => {
	const now = (boil_for: string) =>
		rowsOf(plan(unitWith({ heat_kw: 3, plan_days: 3, boil_for })), "levers.csv")[0];
	const [ready, waits] = [now("every_round"), now("after_use")];
	expect(valueIn(waits?.turnaround_minutes)).toBe(valueIn(ready?.turnaround_minutes));
	expect(numberIn(waits, "unmet_per_1000_uses")).toBeGreaterThan(
		2 * (numberIn(ready, "unmet_per_1000_uses") as number),
	);
});
