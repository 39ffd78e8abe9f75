import { describe, expect, test } from "vitest";
import {
	always,
	type Counts,
	chanceAtMost,
	mean,
	once,
	setAside,
	TAIL,
} from "../../../src/core/counts/counts.ts";
import { groupsOf, meanGroups } from "../../../src/core/counts/groupsOf.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { either, plus, sumOf } from "../../../src/core/counts/sumOf.ts";
import { expectWithin } from "../../expectWithin.ts";

const die: Counts = { first: 1, chance: new Float64Array(6).fill(1 / 6) };

describe("setAside", () => {
	test.each([
		[0.5, 3],
		[0.51, 4],
		[0.8333, 5],
		[0.8334, 6],
		[0.9999, 6],
	])("with a chance of %d a die needs %d", (level, count) => {
		expect(setAside(die, level)).toBe(count);
	});

	test.each([
		[3, 0.95, 6],
		[20, 0.95, 28],
		[100, 0.95, 117],
		[0.04, 0.95, 0],
		[0.28, 0.95, 1],
		[21, 0.95, 29],
	])("mean %d at %d sets aside %d", (m, level, count) => {
		expect(setAside(poisson(m), level)).toBe(count);
	});

	test("it is the smallest number that is enough", () => {
		for (const m of [0.3, 1, 2.74, 8, 50])
			for (const level of [0.5, 0.8, 0.95, 0.999]) {
				const enough = setAside(poisson(m), level);
				expect(chanceAtMost(poisson(m), enough)).toBeGreaterThanOrEqual(level);
				expect(chanceAtMost(poisson(m), enough - 1)).toBeLessThan(level);
			}
	});
});

describe("simple counts", () => {
	test("where chances do not reach the level, the last is set aside", () => {
		expect(setAside({ first: 3, chance: Float64Array.of(0.5, 0.4) }, 0.95)).toBe(4);
	});

	test("a known count", () => {
		expect([mean(always(4)), setAside(always(4), 0.5), chanceAtMost(always(4), 3)]).toEqual([
			4, 4, 0,
		]);
	});

	test("something that may happen once", () => {
		expect(mean(once(0.25))).toBe(0.25);
		expect([setAside(once(0.25), 0.75), setAside(once(0.25), 0.76)]).toEqual([0, 1]);
	});

	test("chanceAtMost outside the counts is 0 or 1", () => {
		expect(chanceAtMost(die, 0)).toBe(0);
		expectWithin(chanceAtMost(die, 100), 1, 1e-15, "chance");
	});
});

describe("sums", () => {
	test("two dice", () => {
		const two = plus(die, die);
		expect(two.first).toBe(2);
		expectWithin(two.chance[5], 6 / 36, 1e-15, "chance of 7");
		expect(two.chance).toHaveLength(11);
	});

	test("Poisson counts add up to a Poisson count", () => {
		const summed = sumOf([poisson(0.3), poisson(2), poisson(0), poisson(7.7)]);
		for (let k = 0; k < 30; k++)
			expectWithin(chanceAtMost(summed, k), chanceAtMost(poisson(10), k), 1e-12, "chance");
	});

	test("a year of days keeps its mean, though tails are cut", () => {
		const year = sumOf(Array.from({ length: 366 }, () => poisson(0.7)));
		expectWithin(mean(year), 366 * 0.7, 1e-9, "kits");
		expect(year.chance.length).toBeLessThan(400);
	});

	test("no parts add up to 0, and known counts only shift", () => {
		expect(sumOf([])).toEqual(always(0));
		expect(sumOf([always(2), always(3)])).toEqual(always(5));
	});

	test("rounds that run are Poisson-binomial", () => {
		const { chance } = sumOf([once(0.5), once(0.2), once(0.1)]);
		const expected = [0.36, 0.49, 0.14, 0.01];
		expected.forEach((p, i) => {
			expectWithin(chance[i], p, 1e-15, "chance");
		});
	});

	test("chances that nobody could see are none, and the others stay", () => {
		const hardly: Counts = { first: 0, chance: Float64Array.of(0.5, 1e-31, 1e-29, 0.5) };
		expect([...plus(hardly, always(0)).chance]).toEqual([0.5, 0, 1e-29, 0.5]);
	});

	const cut = TAIL * 1e-3;
	test.each([
		["at the beginning", [cut / 2, cut / 3, 0.5, 0.5], 2, [0.5, 0.5]],
		["at the end", [0.5, 0.5, cut / 3, cut / 2], 0, [0.5, 0.5]],
		["at both", [cut / 2, 0.5, 0.5, cut / 2], 1, [0.5, 0.5]],
		["but not once they add up to enough", [cut, 0.5, 0.5, cut], 0, [cut, 0.5, 0.5, cut]],
		["together", [cut / 2, cut / 2, 1, cut / 2, cut / 2], 1, [cut / 2, 1, cut / 2]],
		["but one is left", [cut / 4, cut / 4, cut / 4], 2, [cut / 4]],
	])("tails that nobody could see are cut off, %s", (_what, from, first, left) => {
		const counts = plus({ first: 7, chance: Float64Array.from(from) }, always(0));
		expect([counts.first, [...counts.chance]]).toEqual([7 + first, left]);
	});

	test("counts that are alike are one to the last digit, whichever object they are", () => {
		const copy = ({ first, chance }: Counts): Counts => ({ first, chance: chance.slice() });
		const [day, other] = [poisson(0.7), poisson(0.31)];
		const same = sumOf([day, other, day, day, day, other, day, day, day]);
		const copies = [day, other, day, day, day, other, day, day, day].map(copy);
		expect(sumOf(copies)).toEqual(same);
	});

	test.each([
		[[0.25, 0.5, 0.25], 0, [0.125, 0.5, 0.375], 0],
		[[0.25, 0.5, 0.25], 0, [0.25, 0.5, 0.125, 0.125], -1],
		[[0.25, 0.5, 0.25], 0, [0.25, 0.5], 1],
		[[0.25, 0.5, 0.25], 0, [0.25, 0.5, 0.25], 1],
	])("%j from %d on is not taken for %j from %d on", (one, first, other, from) => {
		const parts = [
			{ first, chance: Float64Array.from(one) },
			{ first: from, chance: Float64Array.from(other) },
		] as const;
		expect(sumOf(parts)).toEqual(plus(...parts));
	});

	test("sums beyond the most are left out", () => {
		expect(plus(die, die, 4)).toEqual({
			first: 2,
			chance: Float64Array.of(1 / 36, 2 / 36, 3 / 36),
		});
		expect(plus(die, die, 1)).toEqual({ first: 1, chance: new Float64Array(1) });
		expect(plus(die, die, 2).chance).toHaveLength(1);
	});

	test("either way to a count adds the chances, wherever the counts begin", () => {
		const half = (at: number): Counts => ({ first: at, chance: Float64Array.of(0.5) });
		expect(either(half(3), half(1))).toEqual({ first: 1, chance: Float64Array.of(0.5, 0, 0.5) });
		expect(either(half(1), half(3))).toEqual({ first: 1, chance: Float64Array.of(0.5, 0, 0.5) });
		const two = (at: number): Counts => ({ first: at, chance: Float64Array.of(0.25, 0.25) });
		expect(either(two(0), two(1))).toEqual({ first: 0, chance: Float64Array.of(0.25, 0.5, 0.25) });
		expect(either(undefined, half(1))).toEqual(half(1));
	});
});

describe("groupsOf", () => {
	test.each([
		[0, 3],
		[1e-3, 2],
		[0.7, 1],
		[0.7, 2],
		[40, 3],
		[599, 7],
		[601, 7],
		[900, 7],
	])("of %d kits on average, in soaks of %d, the mean of their loads", (kits, size) => {
		const loads = mean(groupsOf(poisson(kits), size));
		expectWithin(meanGroups(kits, size), loads, 1e-11 * loads, "loads");
	});

	test("seven kinds of load from a soak that holds three", () => {
		const seven: Counts = { first: 0, chance: new Float64Array(8).fill(1 / 8) };
		const { first, chance } = groupsOf(seven, 3);
		expect(first).toBe(0);
		[1, 3, 3, 1].forEach((ways, i) => {
			expectWithin(chance[i], ways / 8, 1e-15, "chance");
		});
	});

	test.each([
		[1, 4, 4],
		[3, 4, 2],
		[4, 4, 1],
		[5, 4, 1],
		[3, 0, 0],
	])("in soaks of %d, %d kits make %d loads", (size, kits, loads) => {
		expect(groupsOf(always(kits), size)).toEqual(always(loads));
	});

	test("a soak for one kit changes nothing", () => {
		expect(groupsOf(poisson(3), 1)).toEqual(poisson(3));
	});
});
