import { describe, expect, test } from "vitest";
import { chanceAtMost, mean, setAside } from "../../../src/core/counts/counts.ts";
import { chanceAtLeast, expectedBeyond, poisson } from "../../../src/core/counts/poisson.ts";
import { expectWithin } from "../../expectWithin.ts";

const means = [1e-9, 0.001, 0.04, 0.6, 1, 3, 20, 100, 699.5, 745, 5000, 100_000];

describe("poisson", () => {
	test.each(means)("of mean %d adds up to 1 and has that mean", (m) => {
		const counts = poisson(m);
		expectWithin(
			counts.chance.reduce((sum, p) => sum + p, 0),
			1,
			1e-12,
			"chance",
		);
		expectWithin(mean(counts), m, 1e-11 * Math.max(1, m), "births");
		expect(counts.first).toBeGreaterThanOrEqual(0);
	});

	test.each(means)("of mean %d has its mean as variance", (m) => {
		const { first, chance } = poisson(m);
		const variance = chance.reduce((sum, p, i) => sum + p * (first + i - m) ** 2, 0);
		expectWithin(variance, m, 1e-8 * Math.max(1, m), "births²");
	});

	test("of mean 0 is always 0", () => {
		expect(poisson(0)).toEqual({ first: 0, chance: Float64Array.of(1) });
		expect(setAside(poisson(0), 0.9999)).toBe(0);
	});

	test.each([
		[1e-300, 0],
		[5e-324, 0],
		[1e-20, 0],
	])("of the tiny mean %d sets aside %d", (m, count) => {
		expect(setAside(poisson(m), 0.9999)).toBe(count);
	});
});

describe("expectedBeyond", () => {
	/** The definition, term by term; good for small means only. */
	function byDefinition(kits: number, m: number): number {
		const { first, chance } = poisson(m);
		return chance.reduce((sum, p, i) => sum + Math.max(0, first + i - kits) * p, 0);
	}

	test.each([
		[0, 0.6],
		[1, 0.6],
		[2, 0.6],
		[3, 4],
		[4, 4],
		[5, 4],
		[95, 100],
		[120, 100],
		[990, 1000],
	])("of %d kits at mean %d is the mean excess", (kits, m) => {
		expectWithin(expectedBeyond(kits, m), byDefinition(kits, m), 1e-10, "uses");
	});

	test("no kits leave every use beyond", () => {
		for (const m of means) expectWithin(expectedBeyond(0, m), m, 1e-10 * Math.max(1, m), "uses");
	});

	test("no uses leave none beyond", () => {
		expect([expectedBeyond(0, 0), expectedBeyond(5, 0)]).toEqual([0, 0]);
	});

	test("each further kit takes away the chance of needing it", () => {
		for (let kits = 0; kits < 15; kits++)
			expectWithin(
				expectedBeyond(kits, 4) - expectedBeyond(kits + 1, 4),
				chanceAtLeast(kits + 1, 4),
				1e-13,
				"uses",
			);
	});

	test("stays exact where it is tiny: its first term leads", () => {
		const leading = (Math.exp(-0.01) * 0.01 ** 11) / 39_916_800;
		expectWithin(expectedBeyond(10, 0.01) / leading, 1, 0.002, "times");
	});
});

describe("chanceAtLeast", () => {
	test.each(means.filter((m) => m < 6000))("of mean %d is what chanceAtMost leaves", (m) => {
		for (const kits of [1, Math.floor(m), Math.ceil(m + 2 * Math.sqrt(m))])
			if (kits > 0)
				expectWithin(
					chanceAtLeast(kits, m),
					1 - chanceAtMost(poisson(m), kits - 1),
					1e-11,
					"chance",
				);
	});

	test("at least none is certain", () => {
		expect([chanceAtLeast(0, 3), chanceAtLeast(-1, 3), chanceAtLeast(0, 0)]).toEqual([1, 1, 1]);
	});

	test("without uses nothing is needed", () => {
		expect(chanceAtLeast(1, 0)).toBe(0);
	});

	test("falls with every kit, also beyond the terms that are kept", () => {
		for (let kits = 1; kits < 60; kits++)
			expect(chanceAtLeast(kits + 1, 3)).toBeLessThan(chanceAtLeast(kits, 3));
	});
});
