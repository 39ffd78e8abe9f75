import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { codesOf, problemCodes, rowsOf, totalOf } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

describe("one bad day", () => {
	const made = plan(smallUnit({ "births.csv": "date,births,note\n2027-03-03,two," }));

	test("leaves the days before it, and what it brings to the day after", () => {
		const births = rowsOf(made, "day-plan.csv").map((row) => row.births_expected?.outcome.ok);
		expect(births).toEqual([true, true, false, true, true, true, true]);
		const rounds = rowsOf(made, "day-plan.csv").map((row) => row.rounds_expected?.outcome.ok);
		expect(rounds).toEqual([true, true, false, false, true, true, true]);
	});

	test("leaves the week without a total", () => {
		expect(codesOf(totalOf(made, "births").set_aside)).toEqual(["bad-cell"]);
	});

	test("is said once", () => {
		expect(problemCodes(made, "error")).toEqual(["bad-cell"]);
	});
});

describe("without a first day", () => {
	test.each([
		["not given", "", "not-given"],
		["no such day", "2027-02-29", "bad-cell"],
	])("%s: no plan, the sheets are empty", (_what, start, code) => {
		const made = plan(unitWith({ plan_start: start }));
		expect(made.made).toBe(false);
		expect(problemCodes(made)).toContain(code);
		expect(rowsOf(made, "day-plan.csv")).toEqual([]);
		expect(Object.keys(made.tables)).toContain("week-total.csv");
	});

	test("days nobody can count leave it too", () => {
		expect(plan(unitWith({ plan_days: "some" }))).toMatchObject({ made: false });
	});
});

describe("an empty workbook", () => {
	test("has a problem for each file that must be there", () => {
		const files = plan({ tables: {} })
			.problems.filter((p) => p.code === "missing-file")
			.map((p) => p.file);
		expect(files).toEqual(
			expect.arrayContaining([
				"unit.csv",
				"births.csv",
				"rounds.csv",
				"steps.csv",
				"kinds.csv",
				"kits.csv",
				"usage.csv",
				"items.csv",
				"chlorine.csv",
				"lots.csv",
			]),
		);
		expect(files).not.toContain("hours.csv");
	});
});

describe("a product that is not in use", () => {
	test("may be impossible without the plan waiting for it", () => {
		const made = plan(
			smallUnit({
				"chlorine.csv":
					"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use\nliquid,liquid,5,pct_w_v,,,,yes\ntablets,liquid,0.1,pct_w_v,,,,no",
			}),
		);
		expect(made.made).toBe(true);
		expect(problemCodes(made)).toContain("too-weak");
		expect(codesOf(rowsOf(made, "mixing.csv")[1]?.product_quantity)).toEqual(["too-weak"]);
	});
});
