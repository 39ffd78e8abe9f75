import { describe, expect, test } from "vitest";
import { bestDiscount } from "../../../src/core/forecast/bestDiscount.ts";
import { discountedFilter } from "../../../src/core/forecast/discountedFilter.ts";
import { expectWithin } from "../../expectWithin.ts";
import { randomNumbers } from "../../reference/randomNumbers.ts";
import { repeated } from "./register.ts";

const even = [1, 1, 1, 1, 1, 1, 1];
/** One-step forecasts as they are made: day, count, size, mean. */
function steps(counts: readonly (number | null)[], factors = even, discount = 0.9) {
	const told: number[][] = [];
	const end = discountedFilter(counts, factors, { discount }, (...step) => told.push(step));
	return { told, end };
}

describe("the filter", () => {
	test("each day is forecast from the days before it alone", () => {
		const { told } = steps([3, 1, 4]);
		// a 3 b 1 → 2.7/0.9; then 2.7+1, 0.9+1 → 3.33/1.71
		expect(told.map(([day, count]) => [day, count])).toEqual([
			[1, 1],
			[2, 4],
		]);
		[
			[2.7, 3],
			[3.33, 3.33 / 1.71],
		].forEach(([size, mean], i) => {
			expectWithin(told[i]?.[2], size as number, 1e-12, "size");
			expectWithin(told[i]?.[3], mean as number, 1e-12, "births");
		});
	});

	test.each<[string, (number | null)[], number[]]>([
		["the first forecast comes after the first birth", [0, 0, 5, 4, 0], [3, 4]],
		["a day not recorded is not forecast", [5, null, 4], [2]],
		["nor are gaps of ten days", [5, ...new Array<null>(10).fill(null), 4, 3], [11, 12]],
		["missing days first", [null, null, 5, 4], [3]],
		["no births, no forecasts", [0, 0, 0], []],
		["no days", [], []],
	])("%s", (_what, counts, days) => {
		expect(steps(counts).told.map(([day]) => day)).toEqual(days);
	});

	test.each([1, 2, 10])("%d days missing only discount", (missing) => {
		const before = steps([3, 1, 4]).end;
		const after = steps([3, 1, 4, ...new Array<null>(missing).fill(null)]).end;
		expectWithin(after.a, before.a * 0.9 ** missing, 1e-12, "births");
		expectWithin(after.b, before.b * 0.9 ** missing, 1e-12, "days");
		expect(after.logLikelihood).toBe(before.logLikelihood);
	});

	test("zeros before the first birth count as days", () => {
		const { a, b } = steps([0, 0, 6], even, 1).end;
		expect([a, b]).toEqual([6, 3]);
	});

	test("without discounting the level is the plain mean", () => {
		const counts = [3, 1, 4, 1, 5, 9, 2, 6];
		const { a, b } = steps(counts, even, 1).end;
		expectWithin(a / b, 31 / 8, 1e-12, "births");
	});

	test("the level is the exponentially weighted mean of the days", () => {
		const counts = [3, 1, 4, 1, 5, 9, 2, 6];
		const { a, b } = steps(counts, even, 0.8).end;
		const weights = counts.map((_, i) => 0.8 ** (counts.length - 1 - i));
		const sum = weights.reduce((all, w) => all + w, 0);
		expectWithin(b, sum, 1e-12, "days");
		expectWithin(
			a / b,
			counts.reduce((all, y, i) => all + y * (weights[i] as number), 0) / sum,
			1e-12,
			"births",
		);
	});

	test("a busy weekday is expected to be busy, and teaches no more than its share", () => {
		const factors = [0.5, 1.5];
		const { told, end } = steps(repeated([2, 6], 10), factors, 1);
		expectWithin(end.a / end.b, 4, 1e-12, "births");
		expectWithin(told.at(-1)?.[3], 1.5 * (74 / 18.5), 1e-12, "births");
	});
});

describe("days that vary more than Poisson", () => {
	test("by hand: wild days count less", () => {
		// ω 0.9, r 5: a 4, b 1; μ 4 after 0.9: 1/size = 1/3.6 + 1/5 + 1/18; weight 1 + 4/5
		const told: number[][] = [];
		const end = discountedFilter([4, 9], even, { discount: 0.9, daySpread: 1 / 5 }, (...step) =>
			told.push(step),
		);
		expectWithin(told[0]?.[2], 1 / (1 / 3.6 + 1 / 5 + 1 / 18), 1e-12, "size");
		expectWithin(told[0]?.[3], 4, 1e-12, "births");
		expectWithin(end.a, 3.6 + 9 / 1.8, 1e-12, "births");
		expectWithin(end.b, 0.9 + 1 / 1.8, 1e-12, "days");
	});

	test("no spread of its own is the filter as published, to the last digit", () => {
		const counts = [3, 1, 4, 1, 5, 9, 2, 6];
		const published = discountedFilter(counts, even, { discount: 0.9 });
		expect(discountedFilter(counts, even, { discount: 0.9, daySpread: 0 })).toEqual(published);
	});
});

describe("the discount", () => {
	/** The likelihood at every thousandth, told by the filter itself. */
	const onGrid = (counts: readonly number[]) =>
		Array.from({ length: 201 }, (_, i) => 0.8 + i / 1000).reduce((best, discount) =>
			discountedFilter(counts, even, { discount }).logLikelihood >
			discountedFilter(counts, even, { discount: best }).logLikelihood
				? discount
				: best,
		);
	const random = randomNumbers(41);
	const noisy = (level: (day: number) => number) =>
		Array.from({ length: 200 }, (_, day) => {
			let count = 0;
			for (let limit = Math.exp(-level(day)), p = random(); p > limit; p *= random()) count++;
			return count;
		});

	test.each<[string, number[]]>([
		["a level that jumps", repeated([noisy(() => 2), noisy(() => 12)], 1).flat()],
		["a level that swings", noisy((day) => 6 + 5 * Math.sin(day / 9))],
		["a level that drifts", noisy((day) => 3 + day / 30)],
		["a steady level", noisy(() => 5)],
		["five days", [3, 1, 4, 1, 5]],
	])("of %s is the likeliest", (_what, counts) => {
		const best = bestDiscount(counts, even);
		const grid = onGrid(counts);
		expectWithin(best, grid, 0.0011, "of what was known");
		expect(discountedFilter(counts, even, { discount: best }).logLikelihood).toBeGreaterThanOrEqual(
			discountedFilter(counts, even, { discount: grid }).logLikelihood - 1e-3, // the discount is found to within 1e-6
		);
	});

	test("stays within its limits", () => {
		expect(bestDiscount(repeated([5], 60), even)).toBe(1);
		expectWithin(bestDiscount([...repeated([1], 30), ...repeated([60], 30)], even), 0.8, 1e-5, "");
	});
});
