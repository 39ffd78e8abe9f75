import { expect, test } from "vitest";
import { laguerreNodes } from "../../../src/core/counts/laguerreNodes.ts";
import {
	mixedMoments,
	momentsIn,
	momentsOf,
	momentsOfSum,
} from "../../../src/core/counts/moments.ts";
import { momentsBetween } from "../../../src/core/counts/momentsBetween.ts";
import { expectWithin } from "../../expectWithin.ts";

test("moments of a count, worked by hand", () => {
	// 1 or 3 with the chances 3/4 and 1/4: mean 1.5, away by −0.5 and 1.5.
	const found = momentsOf({ first: 1, chance: Float64Array.of(0.75, 0, 0.25) });
	expect(found).toEqual({ mean: 1.5, variance: 0.75, third: 0.75, most: 3 });
});

test("of a sum each part counts by its amount, once, squared and cubed", () => {
	const parts = [
		{ mean: 1, variance: 2, third: 3, most: 4 },
		{ mean: 5, variance: 6, third: 7, most: 8 },
	];
	expect(momentsOfSum(parts, undefined)).toEqual({ mean: 6, variance: 8, third: 10, most: 12 });
	expect(momentsOfSum(parts, [2, 3])).toEqual({ mean: 17, variance: 62, third: 213, most: 32 });
});

test("counted by two at a time, halves, quarters and eighths", () => {
	const found = momentsIn(2, { mean: 6, variance: 8, third: 16, most: 10 });
	expect(found).toEqual({ mean: 3, variance: 2, third: 2, most: 5 });
});

test("of a level that is one of two, what is between the levels adds to what is in each", () => {
	const at = (factor: number) => ({ mean: factor, variance: 1, third: 2, most: 9 });
	const nodes = [
		{ factor: 1, weight: 0.75 },
		{ factor: 3, weight: 0.25 },
	];
	// Away by −0.5 and 1.5: variance 1 + 0.75; third 2 + 3 × 0 + 0.75.
	expect(mixedMoments(nodes, at)).toMatchObject({ mean: 1.5, variance: 1.75, third: 2.75 });
});

test("of births at an uncertain level they are those of a negative binomial count", () => {
	// Mean 6, shape 4: variance m(1 + m/k), third m(1 + m/k)(1 + 2m/k). Two nodes hold a cube.
	const poisson = (factor: number) => {
		const mean = 6 * factor;
		return { mean, variance: mean, third: mean, most: 10 * factor };
	};
	const nodes = laguerreNodes(4, 2);
	const found = mixedMoments(nodes, poisson);
	expectWithin(found.mean, 6, 1e-12, "births");
	expectWithin(found.variance, 15, 1e-12, "");
	expectWithin(found.third, 60, 1e-11, "");
	expect(found.most).toBe(10 * (nodes[1]?.factor as number));
});

test("between the levels worked out, what bends evenly with the root of the level is met exactly", () => {
	const at = (factor: number) => {
		const root = Math.sqrt(factor);
		return { mean: 1 + 2 * root + 3 * factor, variance: 5 - root + factor, third: factor, most: 9 };
	};
	const between = momentsBetween(at, 4);
	for (const factor of [0.03, 0.5, 1.3, 3.9, 4])
		for (const of of ["mean", "variance", "third"] as const)
			expectWithin(between(factor)[of], at(factor)[of], 1e-12, `${of} at ${factor}`);
	expect(between(0)).toEqual(at(0));
	expect(momentsBetween(() => ({ mean: 1, variance: -1, third: 0, most: 9 }), 4)(1)).toEqual({
		mean: 1,
		variance: 0,
		third: 0,
		most: 9,
	});
});

test("moments are worked out at the same levels for nearly as far, and as far as asked", () => {
	const levelsFor = (furthest: number) => {
		const asked: number[] = [];
		const between = momentsBetween((level) => {
			asked.push(level);
			return { mean: level, variance: 0, third: 0, most: 0 };
		}, furthest);
		for (let part = 0; part <= 100; part++) between((part / 100) * furthest);
		return asked;
	};
	expect(levelsFor(10.9)).toEqual(expect.arrayContaining(levelsFor(10)));
	for (const furthest of [0.3, 1, 10, 10.9])
		expect(Math.max(...levelsFor(furthest))).toBeGreaterThan(furthest);
});
