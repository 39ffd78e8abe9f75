import { expect, test } from "vitest";
import { calculationsOf } from "../../../src/core/plan/calculationsOf.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { smallUnit } from "../smallUnit.ts";

test("every calculation behind a plan is found once, down to the last input", () => {
	const found = calculationsOf(plan(smallUnit()));
	const labels = found.map(({ label, formula }) => `${label}: ${formula}`);
	expect(new Set(labels).size).toBe(labels.length);
	// From a cell of the plan, over the counts, to the round that a kit waits for.
	for (const key of ["rounds_set_aside", "rounds_that_run", "kits_in_rounds", "kits_used_expected"])
		expect(found.map((calculation) => calculation.key)).toContain(key);
});

test("a plan that could not be made has none", () => {
	expect(calculationsOf(plan({ tables: {} }))).toEqual([]);
});
