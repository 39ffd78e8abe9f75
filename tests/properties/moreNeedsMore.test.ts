import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { measures } from "../../src/core/sheets/planMeasures.ts";
import { numberIn, rowsOf, totalOf } from "../core/planCells.ts";
import { unitWith } from "../core/smallUnit.ts";
import { always } from "./workbooks.ts";

const ROUNDING = 1e-9;

/** Everything that a plan asks for, by name; what has no answer is left out. */
function asked(made: Plan): Map<string, number> {
	const amounts = new Map<string, number>();
	const keep = (name: string, amount: number | undefined) => {
		if (amount !== undefined) amounts.set(name, amount);
	};
	for (const measure of measures.filter((m) => m !== "kits_expired"))
		for (const column of ["expected", "set_aside"])
			keep(`${measure} ${column}`, numberIn(totalOf(made, measure), column));
	const [day] = rowsOf(made, "day-plan.csv");
	for (const column of Object.keys(day ?? {}))
		if (!column.startsWith("kits_expired")) keep(column, numberIn(day, column));
	rowsOf(made, "supply-use.csv").forEach((row, i) => {
		keep(`item ${i}`, numberIn(row, "set_aside"));
	});
	return amounts;
}

function expectNoLess(less: Plan, more: Plan, names: (name: string) => boolean = () => true): void {
	const wanted = asked(more);
	for (const [name, amount] of asked(less)) {
		const other = wanted.get(name);
		if (!names(name) || other === undefined) continue;
		expect(other, `${name} goes from ${amount} to ${other}`).toBeGreaterThanOrEqual(
			amount * (1 - ROUNDING) - ROUNDING,
		);
	}
	expect(wanted.size).toBeGreaterThan(20);
}

const pair = (min: number, max: number) =>
	fc
		.tuple(fc.double({ min, max, noNaN: true }), fc.double({ min, max, noNaN: true }))
		.map((both) => both.map((x) => Number(x.toFixed(4))).sort((a, b) => a - b) as [number, number]);
const ways = fc.record({
	reprocessing: fc.constantFrom("in_rounds", "after_each_use"),
	solution_made: fc.constantFrom("each_round", "each_day"),
	solution_life_hours: fc.integer({ min: 1, max: 24 }),
	descale_every_rounds: fc.integer({ min: 0, max: 9 }),
	plan_days: fc.integer({ min: 1, max: 9 }),
	kits_used_per_100_births: fc.integer({ min: 0, max: 100 }),
});

describe("more births never need less", () => {
	test("of anything, where ready kits hardly go out of date", () => {
		fc.assert(
			fc.property(pair(0, 60), ways, ([few, many], way) => {
				const unit = { ...way, ready_life_days: 90 };
				expectNoLess(
					plan(unitWith({ ...unit, births_per_day: few })),
					plan(unitWith({ ...unit, births_per_day: many })),
				);
			}),
			always(80),
		);
	}, 60_000);
});

describe("being surer never sets less aside", () => {
	test("of anything", () => {
		fc.assert(
			fc.property(
				pair(0.5, 0.9999),
				fc.double({ min: 0, max: 40, noNaN: true }),
				ways,
				([less, more], births, way) => {
					const unit = { ...way, births_per_day: births.toFixed(3) };
					expectNoLess(
						plan(unitWith({ ...unit, plan_confidence: less })),
						plan(unitWith({ ...unit, plan_confidence: more })),
					);
				},
			),
			always(80),
		);
	}, 60_000);
});

describe("a smaller risk never needs fewer kits", () => {
	test("in any unit", () => {
		fc.assert(
			fc.property(
				pair(0.001, 500),
				fc.double({ min: 0, max: 40, noNaN: true }),
				([small, large], births) => {
					const unit = { births_per_day: births.toFixed(3) };
					expectNoLess(
						plan(unitWith({ ...unit, unmet_per_1000_uses: large })),
						plan(unitWith({ ...unit, unmet_per_1000_uses: small })),
					);
				},
			),
			always(40),
		);
	}, 60_000);
});
