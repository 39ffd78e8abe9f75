import { describe, expect, test } from "vitest";
import { scaled } from "../../../src/core/amounts.ts";
import { chanceEnough, nextSmaller } from "../../../src/core/counts/chanceEnough.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { spread } from "../../../src/core/counts/spread.ts";
import { expectWithin } from "../../expectWithin.ts";

const loads = { counts: { first: 0, chance: Float64Array.of(0.6, 0, 0.3, 0.1) }, size: 30 };

test.each([
	[0, 0.6, undefined],
	[29, 0.6, 0],
	[60, 0.9, 0],
	[89.9999, 0.9, 60],
	[90, 1, 60],
	[1000, 1, 90],
])("%d L in loads of 30 L: enough with %d, next below %d", (litres, chance, smaller) => {
	expectWithin(chanceEnough(loads, litres), chance, 1e-12, "chance");
	expect(nextSmaller(loads, litres)).toBe(smaller);
});

test("where one of them is nothing, nothing is always enough", () => {
	const nothing = { ...loads, size: 0 };
	expect([chanceEnough(nothing, 0), chanceEnough(nothing, 5)]).toEqual([1, 1]);
	expect([nextSmaller(nothing, 0), nextSmaller(nothing, 5)]).toEqual([undefined, undefined]);
});

test("what is scaled keeps its chances", () => {
	expect(chanceEnough(scaled(loads, 0.1), 6)).toBe(chanceEnough(loads, 60));
	expectWithin(nextSmaller(scaled({ counts: poisson(3), size: 0.1 }, 1), 0.3), 0.2, 1e-12, "L");
});

test("wherever in its count of seven rounds a day falls, a descaling comes as often as rounds ÷ 7", () => {
	const descalings = spread(
		{ first: 0, chance: Float64Array.of(0.25, 0, 0.5, 0, 0, 0, 0, 0, 0.25) },
		(r) => r / 7,
	);
	// None, 2 of 7, or 8: one and one more in 1 of 7.
	expect([...descalings.chance]).toEqual([
		expect.closeTo(0.25 + (0.5 * 5) / 7, 12),
		expect.closeTo((0.5 * 2) / 7 + (0.25 * 6) / 7, 12),
		expect.closeTo(0.25 / 7, 12),
	]);
});

/** 2.5 and 4 with a half and a quarter, in no order, and 1 that never comes, in steps of two. */
const few = {
	counts: {
		first: 0,
		chance: Float64Array.of(0.25, 0.5, 0.25, 1e-13),
		places: Float64Array.of(4, 2.5, 0, 1),
	},
	size: 2,
};

test.each([
	[0, 0.25, undefined],
	[4.9, 0.25, 0],
	[5, 0.75, 0],
	[7, 0.75, 5],
	[8, 1, 5],
	[100, 1, 8],
])(
	"of amounts in any order, %d is enough with a chance of %d; the next smaller is %s",
	(amount, enough, less) => {
		expectWithin(chanceEnough(few, amount), enough, 1e-12, "chance");
		expect(nextSmaller(few, amount)).toBe(less);
	},
);

test("below many large packs is one pack fewer", () => {
	const packs = { counts: { first: 98, chance: new Float64Array(5).fill(0.2) }, size: 10_000 };
	expect(nextSmaller(packs, 1_010_000)).toBe(1_000_000);
});

test("an amount of very many steps is itself, whatever rounding leaves of it", () => {
	const steps = 123_456_789_012;
	const chance = Float64Array.of(0.5, 0.5);
	const many = {
		counts: { first: 0, chance, places: Float64Array.of(steps, steps / 2) },
		size: 1e-6,
	};
	const amount = steps * 1e-6 * (1 - 2e-16);
	expect(chanceEnough(many, amount)).toBe(1);
	expect(nextSmaller(many, amount)).toBe((steps / 2) * 1e-6);
});

describe("what comes beyond the amounts that were followed", () => {
	const followed = { first: 2, chance: Float64Array.of(0.5, 0.25) };
	const rest = { first: 6, chance: Float64Array.of(0.125, 0, 0.125) };
	const amounts = { counts: { ...followed, beyond: () => rest }, size: 0.5 };

	test.each([
		[1, 0.5, undefined],
		[1.5, 0.75, 1],
		[2, 0.75, 1.5],
		[3, 0.875, 1.5],
		[3.5, 0.875, 3],
		[4, 1, 3],
		[1000, 1, 4],
	])("%d is enough with a chance of %d; the next smaller is %s", (amount, enough, less) => {
		expectWithin(chanceEnough(amounts, amount), enough, 1e-12, "chance");
		expect(nextSmaller(amounts, amount)).toBe(less);
	});

	test("is not asked for among them", () => {
		const beyond = () => {
			throw new Error("asked");
		};
		const few = { counts: { ...followed, beyond }, size: 0.5 };
		expect([chanceEnough(few, 1.9), nextSmaller(few, 1.9)]).toEqual([0.75, 1.5]);
		expect(() => chanceEnough(few, 2)).toThrow("asked");
	});
});
