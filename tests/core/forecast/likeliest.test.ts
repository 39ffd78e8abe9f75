import { expect, test } from "vitest";
import { bestDiscount } from "../../../src/core/forecast/bestDiscount.ts";
import { discountedFilter } from "../../../src/core/forecast/discountedFilter.ts";
import { likeliest } from "../../../src/core/forecast/likeliest.ts";

const wild = [2, 9, 4, 12, 3, 7, 1, 10, 5, 6, 14, 2, 8, 3, 5, 4, 11, 6, 2, 7];
const wilder = [0, 0, 30, 1, 0, 2, 45, 0, 3, 0, 0, 12, 0, 60, 1, 0, 8, 0, 0, 25];
const weeks = (days: readonly number[]) => Array.from({ length: 4 }, () => days).flat();

/** The likeliest size of all that are tried, whatever the order in which they are. */
function bestOf(counts: readonly number[], sizes: readonly number[]): number {
	const scores = sizes.map((size) => {
		const daySpread = 1 / size;
		const discount = bestDiscount(counts, [1], daySpread);
		return discountedFilter(counts, [1], { discount, daySpread }).logLikelihood;
	});
	return sizes[scores.indexOf(Math.max(...scores))] as number;
}

test("days that vary more than Poisson have the size under which they are likeliest", () => {
	const counts = weeks(wild);
	const size = bestOf(counts, [14, 10, 7, 5, 3.5, 2.5]);
	expect([10, 7, 5, 3.5]).toContain(size);
	expect(likeliest(counts, [1])).toEqual({
		discount: bestDiscount(counts, [1], 1 / size),
		daySpread: 1 / size,
	});
	expect(likeliest(weeks(wilder), [1]).daySpread).toBe(1 / 2.5);
});

test("days that only seem to vary more, by less than tells, have none", () => {
	const counts = [
		...[6, 5, 2, 4, 7, 6, 4, 6, 2, 6, 4, 14, 3, 3, 6, 6, 2],
		...[6, 5, 6, 6, 6, 2, 8, 9, 2, 4, 4, 4, 8, 7, 5, 3, 6],
	];
	const scoreOf = (daySpread: number) => {
		const discount = bestDiscount(counts, [1], daySpread);
		return discountedFilter(counts, [1], { discount, daySpread }).logLikelihood;
	};
	expect(Math.max(...[80, 40, 20, 10].map((size) => scoreOf(1 / size)))).toBeGreaterThan(
		scoreOf(0),
	);
	expect(likeliest(counts, [1])).toEqual({ discount: bestDiscount(counts, [1]), daySpread: 0 });
});

test("days that vary no more than Poisson have none, and the discount they had without", () => {
	const counts = weeks([3, 5, 4, 6, 2, 1, 7, 4, 4, 6, 5, 3, 0, 8, 4, 5, 5, 6, 1, 4]);
	expect(likeliest(counts, [1])).toEqual({ discount: bestDiscount(counts, [1]), daySpread: 0 });
});
