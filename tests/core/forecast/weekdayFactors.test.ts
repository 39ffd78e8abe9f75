import { describe, expect, test } from "vitest";
import { factorsOf } from "../../../src/core/forecast/weekdayFactors.ts";
import { expectWithin } from "../../expectWithin.ts";
import { register, repeated } from "./register.ts";

const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length;
/** Monday first, as the register begins. */
const week = [10, 6, 6, 6, 6, 4, 4];

describe("weekday factors, Sunday first", () => {
	test.each([1, 2, 8, 52, 500])("%d weeks: the ratio drawn towards 1 by n ÷ (n + 8)", (weeks) => {
		const factors = factorsOf(register(...repeated(week, weeks)));
		const share = weeks / (weeks + 8);
		const sundayFirst = [4, 10, 6, 6, 6, 6, 4];
		sundayFirst.forEach((count, day) => {
			expectWithin(factors[day], 1 + (count / 6 - 1) * share, 1e-12, "times a mean day");
		});
	});

	test("the first day's weekday is found in any century", () => {
		for (const [firstDay, weekday] of [
			["1901-01-01", 2],
			["1969-12-28", 0],
			["1970-01-01", 4],
			["2000-02-29", 2],
			["2027-03-06", 6],
		] as const) {
			const counts = repeated([20, 1, 1, 1, 1, 1, 1], 60);
			const factors = factorsOf({ firstDay, counts });
			expect(factors.indexOf(Math.max(...factors)), firstDay).toBe(weekday);
		}
	});

	test.each<[string, (number | null)[]]>([
		["uneven weeks", [...repeated(week, 5), 9, 9, 9]],
		["days missing", repeated([10, null, 6, 6, 6, 4, 4], 5)],
		["a weekday never recorded", repeated([10, null, 6, 6, 6, 4, 4], 30)],
		["one day", [3]],
		["one huge day", [...repeated(week, 5), 500]],
		["zeros on Sundays", repeated([5, 5, 5, 5, 5, 5, 0], 100)],
	])("%s: mean 1, none below nought", (_what, counts) => {
		const factors = factorsOf(register(...counts));
		expectWithin(mean(factors), 1, 1e-12, "times a mean day");
		expect(Math.min(...factors)).toBeGreaterThanOrEqual(0);
	});

	test("a weekday never recorded is taken as a mean day, before scaling", () => {
		const factors = factorsOf(register(...repeated([10, null, 6, 6, 6, 4, 4], 30)));
		const all = 36 / 6;
		const drawn = [4, 10, null, 6, 6, 6, 4].map((count) =>
			count === null ? 1 : 1 + (count / all - 1) * (30 / 38),
		);
		drawn.forEach((factor, day) => {
			expectWithin(factors[day], factor / mean(drawn), 1e-12, "times a mean day");
		});
	});

	test("even days, or none with a birth, are all alike", () => {
		for (const counts of [repeated([5], 70), repeated([0], 70), []])
			expect(factorsOf(register(...counts))).toEqual([1, 1, 1, 1, 1, 1, 1]);
	});
});
