import { expect, test } from "vitest";
import type { Calculation } from "../../../src/core/calculation.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";
import { calculationsBehind, rowsOf } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

/** Calculations that a module keeps to itself, found by what the cells come from; numbers only. */
const faded = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
	liquid,liquid,3.5,pct_w_v,,1.3,,yes
	powder,powder,70,pct_w_w,,,2,no`;
const made = plan(unitWith({ heat_kw: 3 }, { "chlorine.csv": faded }));
const behind = new Set<Calculation>();
for (const file of Object.keys(made.tables))
	for (const row of rowsOf(made, file))
		for (const cell of Object.values(row)) calculationsBehind(cell, behind);
const withExample = [...behind].filter((c) => typeof c.example?.result === "number");

test("those kept inside a module are among them", () => {
	const keys = withExample.map((c) => c.key);
	expect(keys).toEqual(expect.arrayContaining(["age_days", "containers", "strength_of_powder"]));
});

test.each(withExample.map((c) => [c.key, c] as const))(
	"the example of %s gives what it says",
	(_key, calculation) => {
		const { inputs, result, within } = calculation.example as NonNullable<Calculation["example"]>;
		expectWithin(answerOf(calculation, inputs), result, within, calculation.unit);
	},
);
