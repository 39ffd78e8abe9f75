import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { unitWith } from "../smallUnit.ts";

const advised = (code: string, settings: Record<string, string | number>) =>
	plan(unitWith({ heat_kw: 3, plan_days: 1, ...settings })).problems.filter(
		(problem) => problem.code === code,
	);

test.each([
	["one kit in a load, 10 L in a bucket", { soak_capacity_kits: 1 }, ["bucket_fill_litres"]],
	["one kit in a load, 5 L in a bucket", { soak_capacity_kits: 1, bucket_fill_litres: 5 }, []],
	["three kits in a load", {}, []],
])("smaller buckets: %s", (_what, settings, columns) => {
	const found = advised("buckets-for-one-kit", settings);
	expect(found.map(({ column, weight }) => [column, weight])).toEqual(
		columns.map((column) => [column, "advice"]),
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
	if (offered) expect([found?.column, found?.weight]).toEqual(["boil_for", "advice"]);
});

test("a kit that waits for its water waits for heating, hold and cooling: 272 + 2 + 440 minutes", () => {
	const [found] = advised("boiled-after-use", { boil_for: "after_use" });
	expect(found?.message).toContain("less than 11.9 h before a round");
});
