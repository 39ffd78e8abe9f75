import { expect, test } from "vitest";
import { mean } from "../../../src/core/counts/counts.ts";
import { momentsOf } from "../../../src/core/counts/moments.ts";
import { shiftedGamma } from "../../../src/core/counts/shiftedGamma.ts";
import { expectWithin } from "../../expectWithin.ts";

const totalOf = (...moments: readonly number[]) => {
	const [at = 0, variance = 0, third = 0] = moments;
	return shiftedGamma({ mean: at, variance, third, most: 1000 });
};

test.each([
	["none at all", 10, 0, 0],
	["hardly any: rounding", 10, 1e-20, 1e-30],
	["hardly any, beside a whole number", 9.999999, 1e-12, -1e-18],
	["less than any whole number can have", 9.4, 0.0004, 0],
	["as little as a whole number can have", 9.4, 0.24, -0.048],
])("a total that varies little, %s, keeps its mean and all its chances", (_what, ...moments) => {
	const total = totalOf(...moments);
	expectWithin(
		total.chance.reduce((sum, chance) => sum + chance, 0),
		1,
		1e-12,
		"",
	);
	expectWithin(mean(total), moments[0] as number, 1e-6, "kits");
	expect(total.chance.length).toBeLessThanOrEqual(3);
});

test("a total that varies a little more than its neighbours keeps its variance", () => {
	expectWithin(momentsOf(totalOf(9.5, 0.7, 0)).variance, 0.7, 1e-4, "");
});

// An exponential density of mean 1 begins at none, where it has no value of its own: e⁻¹, e⁻², … are left.
test("the least even total has no chance at the very edge of it", () => {
	const { first, chance } = totalOf(1, 1, 2);
	const sum = chance.reduce((all, each) => all + each, 0);
	expectWithin(sum, 1, 1e-12, "chance");
	for (const count of [1, 2, 3])
		expectWithin(chance[count - first], (Math.E - 1) * Math.exp(-count), 1e-12, "chance");
});

test("a total that varies much keeps mean, variance and skewness", () => {
	const total = momentsOf(totalOf(300, 900, 9000));
	expectWithin(total.mean, 300, 1e-2, "kits");
	expectWithin(total.variance, 900, 1, "");
	expectWithin(total.third, 9000, 100, "");
});

test.each([0, 1e-3, -1e-3])(
	"a total that hardly leans, skewness %d, is as normal counts are",
	(skewness) => {
		const { first, chance } = totalOf(300, 900, skewness * 900 ** 1.5);
		for (const count of [240, 299, 300, 345]) {
			const normal = Math.exp(-((count - 300) ** 2) / 1800) / Math.sqrt(1800 * Math.PI);
			expectWithin(chance[count - first], normal, 2e-3 * normal, "chance");
		}
	},
);

test.each([
	["leaning to few", 300, 900, -9000, 1e-2],
	["so wide that it goes in steps", 50_000, 300 ** 2, 300 ** 3 / 2, 1],
	["wide, leaning to few", 50_000.5, 300 ** 2, -(300 ** 3) / 2, 1],
])("a total %s keeps them too", (_what, mean, variance, third, within) => {
	const total = momentsOf(shiftedGamma({ mean, variance, third, most: 1e6 }));
	expectWithin(total.mean, mean, within, "kits");
	expectWithin(total.variance, variance, variance / 1000, "");
	expectWithin(total.third, third, Math.abs(third) / 100, "");
});

test("no total is above the most there can be, nor below none", () => {
	const { first, chance } = shiftedGamma({ mean: 3, variance: 9, third: 27, most: 5.2 });
	expect([first, chance.length]).toEqual([0, 7]);
	expectWithin(
		chance.reduce((sum, each) => sum + each, 0),
		1,
		1e-12,
		"chance",
	);
});

test.each([30, 17, 2])("what is beyond %d is left out, and no other chance moves", (limit) => {
	const moments = { mean: 20, variance: 25, third: 60, most: 1000 };
	const [all, cut] = [shiftedGamma(moments), shiftedGamma(moments, limit)];
	const known = Array.from({ length: limit + 1 }, (_, i) => all.chance[i - all.first] ?? 0);
	expect(known.map((_, i) => cut.chance[i - cut.first] ?? 0)).toEqual(known);
	expect(cut.first + cut.chance.length - 1).toBe(limit);
});

test("where it may be none, none alone is left of it", () => {
	const moments = { mean: 0.7, variance: 0.8, third: 0.9, most: 1000 };
	const [none] = shiftedGamma(moments).chance;
	expect(none).toBeGreaterThan(0.4);
	expect(shiftedGamma(moments, 0)).toEqual({ first: 0, chance: Float64Array.of(none as number) });
});

test("where none so small comes there is no chance of it", () => {
	const { first, chance } = shiftedGamma({ mean: 300, variance: 25, third: 60, most: 1000 }, 100);
	expect([first, ...chance]).toEqual([100, 0]);
});

test.each([
	["just as much as its neighbours", 9.5, 0.25, 2],
	["a whole number that varies not at all", 9, 0, 1],
])("a total that varies %s lies on them alone", (_what, mean, variance, length) => {
	const total = shiftedGamma({ mean, variance, third: 0, most: 20 });
	expect([total.first, total.chance.length]).toEqual([9, length]);
});
