import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const STEPS = `step,basis,minutes,hands_on,method
	wash,kit,5,yes,
	boil,load,20,no,boiling
	dry,round,5,yes,`;

/** What is said of the fires for pieces, one kit in a pot. */
const said = (settings: Record<string, string | number>) =>
	wholeProblems(
		plan(
			unitWith(
				{ method: "boiling", boil_capacity_kits: 1, plan_days: 1, heat_kw: 3, ...settings },
				{ "steps.csv": STEPS },
			),
		).problems,
	)
		.filter(({ code }) => code.endsWith("-booked-twice"))
		.map(({ weight, code, file, column, received }) => [weight, code, file, column, received]);

const advice = (code: string, column: string) => [
	["advice", code, "unit.csv", column, "no fire for 3 of 6 loads of pieces"],
];

// Three rounds of two kits: the second load of each finds the fire taken.
test.each([
	["one pot", { pots: 1, stoves: 1 }, advice("pots-booked-twice", "pots")],
	["two pots on one stove", { pots: 2, stoves: 1 }, advice("stove-booked-twice", "stoves")],
	["two of both", { pots: 2, stoves: 2 }, []],
])("loads of pieces with %s", (_, settings, expected) => {
	expect(said(settings)).toEqual(expected);
});
