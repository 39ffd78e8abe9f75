import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

const STEPS = `step,basis,minutes,hands_on,method
	wash,round,30,yes,
	boil,load,20,no,boiling`;
const litAt = (settings: Record<string, string | number>) =>
	columnOf(
		plan(
			unitWith(
				{ method: "boiling", plan_days: 1, heat_kw: 3, ...settings },
				{ "steps.csv": STEPS },
			),
		),
		"boiling.csv",
		"light_by",
	);

test("where pieces are boiled and nothing is rinsed, a room in which nothing cools does not matter", () => {
	const lit = litAt({});
	expect(lit).toHaveLength(3);
	expect(lit).not.toContain(undefined);
	expect(litAt({ room_c: 45 })).toEqual(lit);
});

test("where a solution is mixed with boiled water, it does", () => {
	const mixed = { wipe_solution_litres: 1, solution_water: "boiled" };
	expect(litAt(mixed)).not.toContain(undefined);
	expect(litAt({ ...mixed, room_c: 45 })).toContain(undefined);
});
