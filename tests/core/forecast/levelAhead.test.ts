import { describe, expect, test } from "vitest";
import type { LevelOfDay } from "../../../src/core/counts/counts.ts";
import { spanShape } from "../../../src/core/counts/spanShape.ts";
import { levelAhead } from "../../../src/core/forecast/levelAhead.ts";
import { expectWithin } from "../../expectWithin.ts";

describe("how well the level is known", () => {
	test.each([
		[40, 0.9, 1, 36],
		[40, 0.9, 2, 32.4],
		[400, 0.9, 28, 400 * 0.9 ** 28],
		["400, further than 28 days", 0.9, 366, 400 * 0.9 ** 28],
		[40, 1, 366, 40],
		[5, 0.8, 28, 1],
		[0.5, 0.8, 28, 0.4],
		[40, 0.9, -3, 36],
	] as const)("a %s, ω %d, %d days ahead", (a, discount, days, shape) => {
		expectWithin(levelAhead(Number.parseFloat(String(a)), discount, days), shape, 1e-12, "shape");
	});
});

describe("the shape of a span", () => {
	const days = [
		[3, 40],
		[1, 36],
		[5, 20],
	].map(([mean = 0, levelShape = 0]) => ({ mean, levelShape, daySpread: 0 }));

	/** Every pair of days: the covariance of two levels is the variance of the earlier. */
	function byPairs(list: readonly LevelOfDay[]): number {
		let variance = 0;
		list.forEach((one, i) => {
			list.forEach((other, j) => {
				const earlier = 1 / (list[Math.min(i, j)] as LevelOfDay).levelShape;
				const own = i === j ? one.daySpread * (1 + earlier) : 0;
				variance += one.mean * other.mean * (earlier + own);
			});
		});
		return list.reduce((sum, { mean }) => sum + mean, 0) ** 2 / variance;
	}

	test.each([0, 0.2, 0.4])("is that of every pair of days, day spread %d", (daySpread) => {
		const list = days.map((day) => ({ ...day, daySpread }));
		expectWithin(spanShape(list), byPairs(list), 1e-12, "shape");
	});

	test("of two days of mean 3 with A 20 and 10 is 16", () => {
		const pair = [20, 10].map((levelShape) => ({ mean: 3, levelShape, daySpread: 0 }));
		expectWithin(spanShape(pair), 16, 1e-12, "shape");
	});

	test("of one day: 1/shape = 1/A + 1/r + 1/(A·r)", () => {
		const one = spanShape([{ mean: 6, levelShape: 30, daySpread: 1 / 5 }]);
		expectWithin(1 / one, 1 / 30 + 1 / 5 + 1 / 150, 1e-12, "1/shape");
	});

	test("of days without births has no end", () => {
		const none = { mean: 0, levelShape: 4, daySpread: 0 };
		expect(spanShape([none, none])).toBe(Number.POSITIVE_INFINITY);
		expect(spanShape([])).toBe(Number.POSITIVE_INFINITY);
	});
});
