import { describe, expect, test } from "vitest";
import { chanceAtMost, mean, setAside } from "../../../src/core/counts/counts.ts";
import { mixedCount } from "../../../src/core/counts/mixedCount.ts";
import { logChance, negativeBinomial } from "../../../src/core/counts/negativeBinomial.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { plus } from "../../../src/core/counts/sumOf.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

const cases = [0.3, 1, 2.5, 12, 152, 1e4, 1e7].flatMap((size) =>
	[0.01, 0.6, 5, 60, 700].map((m) => [size, m] as const),
);

describe("a negative binomial count", () => {
	test.each(cases)("of size %d and mean %d adds up to 1, with its mean and variance", (size, m) => {
		const counts = negativeBinomial(size, m);
		const { first, chance } = counts;
		const variance = chance.reduce((sum, p, i) => sum + p * (first + i - m) ** 2, 0);
		expectWithin(
			chance.reduce((sum, p) => sum + p, 0),
			1,
			1e-12,
			"chance",
		);
		expectWithin(mean(counts), m, 1e-9 * Math.max(1, m), "births");
		expectWithin(variance / (m + m ** 2 / size), 1, 1e-7, "times");
		expect(first).toBeGreaterThanOrEqual(0);
	});

	test.each(cases)("of size %d and mean %d has the chances that logChance says", (size, m) => {
		const { first, chance } = negativeBinomial(size, m);
		for (const i of [0, chance.length >> 2, chance.length >> 1])
			expectWithin(
				Math.exp(logChance(first + i, size, m)) / (chance[i] as number),
				1,
				1e-8,
				"times",
			);
	});

	test("of size 1 is geometric", () => {
		for (const k of [0, 1, 2, 7, 30])
			expectWithin(Math.exp(logChance(k, 1, 4)), 0.2 * 0.8 ** k, 1e-15, "chance");
	});

	test.each([1e9, 1e12])("of size %d cannot be told from Poisson", (size) => {
		for (const k of [0, 3, 9])
			expectWithin(
				chanceAtMost(negativeBinomial(size, 5), k),
				chanceAtMost(poisson(5), k),
				1e-7,
				"chance",
			);
	});

	test("of mean 0 is always 0", () => {
		expect(negativeBinomial(3, 0)).toEqual({ first: 0, chance: Float64Array.of(1) });
		expect([logChance(0, 3, 0), logChance(1, 3, 0)]).toEqual([0, Number.NEGATIVE_INFINITY]);
	});

	test("the less is known, the more is set aside", () => {
		const levels = [1e9, 100, 20, 5, 2, 1].map((size) => setAside(negativeBinomial(size, 6), 0.95));
		expect(levels).toEqual([...levels].sort((a, b) => a - b));
		expect(levels[0]).toBe(10);
		expect(levels.at(-1)).toBe(19); // geometric: 1 − (6/7)^20 ≥ 0.95
	});
});

describe("the logarithm of a chance", () => {
	/** Term by term from the chance of none. */
	function byProduct(count: number, size: number, m: number): number {
		let log = -size * Math.log1p(m / size);
		for (let k = 1; k <= count; k++) log += Math.log(((size + k - 1) / k) * (m / (m + size)));
		return log;
	}

	test.each([
		[0, 0.5, 3],
		[30, 2.5, 12],
		[31, 2.5, 12],
		[170, 40, 150],
		[171, 40, 150],
		[500, 0.8, 6],
		[500, 3e5, 480],
		[3, 1e-6, 5],
		[40, 1e-6, 5],
		[100, 1e6, 130],
		[400, 1e12, 400],
	])("of %d at size %d and mean %d", (count, size, m) => {
		const exact = byProduct(count, size, m);
		expectWithin(logChance(count, size, m), exact, 1e-9 * Math.max(1, Math.abs(exact)), "log");
	});
});

describe("days of one's own and forecast days together", () => {
	const births = mixedCount("Births", "births");
	test.each([
		[0, 12, 40],
		[5, 12, 40],
		[12, 0, 40],
		[0.5, 3, 0.7],
	])("%d of one's own, %d forecast, size %d: every pair of counts", (own, ahead, size) => {
		const counts = answerOf(births, { poissonMean: own, forecastMean: ahead, size });
		const pairs = new Map<number, number>();
		const mine = poisson(own);
		const theirs = negativeBinomial(size, ahead);
		mine.chance.forEach((p, i) => {
			theirs.chance.forEach((q, j) => {
				const sum = mine.first + i + theirs.first + j;
				pairs.set(sum, (pairs.get(sum) ?? 0) + p * q);
			});
		});
		for (const [sum, chance] of pairs)
			expectWithin(counts.chance[sum - counts.first] ?? 0, chance, 1e-12, "chance");
		expectWithin(mean(counts), own + ahead, 1e-9, "births");
		expect(plus(mine, theirs)).toEqual(counts);
	});
});
