import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { expectWithin } from "../../expectWithin.ts";
import { numberIn, rowsOf, totalOf, valueIn } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

const weeks = (days: number) => rowsOf(plan(unitWith({ plan_days: days })), "week-plan.csv");

describe("the plan by week", () => {
	test.each([
		[1, [["2027-03-01", "2027-03-01"]]],
		[7, [["2027-03-01", "2027-03-07"]]],
		[
			10,
			[
				["2027-03-01", "2027-03-07"],
				["2027-03-08", "2027-03-10"],
			],
		],
	])("%i days: seven days from the first on, then what is left", (days, spans) => {
		expect(weeks(days).map(({ from, to }) => [valueIn(from), valueIn(to)])).toEqual(spans);
	});

	test("a plan of one week says of it what it says of the whole", () => {
		const made = plan(unitWith({ plan_days: 7 }));
		const [row] = rowsOf(made, "week-plan.csv");
		for (const [measure, stem] of [
			["births", "births"],
			["rounds", "rounds"],
			["boiled_litres", "boiled_litres"],
		] as const) {
			const total = totalOf(made, measure);
			expect(numberIn(row, `${stem}_expected`)).toBe(numberIn(total, "expected"));
			expect(numberIn(row, `${stem}_set_aside`)).toBe(numberIn(total, "set_aside"));
		}
	});

	test("a week is less than its days set aside one by one, and the weeks' means add up to the whole", () => {
		const made = plan(unitWith({ plan_days: 31 }));
		const [first] = rowsOf(made, "week-plan.csv");
		const days = rowsOf(made, "day-plan.csv").slice(0, 7);
		const oneByOne = days.reduce((sum, day) => sum + (numberIn(day, "births_set_aside") ?? 0), 0);
		expect(numberIn(first, "births_set_aside")).toBeLessThan(oneByOne);
		const means = rowsOf(made, "week-plan.csv").map((row) => numberIn(row, "births_expected") ?? 0);
		const whole = numberIn(totalOf(made, "births"), "expected") ?? 0;
		expectWithin(
			means.reduce((sum, mean) => sum + mean, 0),
			whole,
			1e-9,
			"births",
		);
	});
});
