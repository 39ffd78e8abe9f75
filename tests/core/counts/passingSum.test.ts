import { expect, test } from "vitest";
import { type Counts, TAIL } from "../../../src/core/counts/counts.ts";
import { passingSum } from "../../../src/core/counts/passingSum.ts";
import { expectWithin } from "../../expectWithin.ts";
import { randomNumbers } from "../../reference/randomNumbers.ts";

/** Chances that add up to 1, of which some are none. */
function anyCount(first: number, length: number, share: number, seed: number): Counts {
	const random = randomNumbers(seed);
	const weights = Array.from({ length }, (_, i) =>
		i === 0 || i === length - 1 || random() < share ? 1 + random() : 0,
	);
	const all = weights.reduce((sum, weight) => sum + weight, 0);
	return { first, chance: Float64Array.from(weights, (weight) => weight / all) };
}

test.each([
	["two short", 3, 1, 4, 1],
	["one that is for sure", 1, 1, 9, 1],
	["most of them cannot be", 60, 0.1, 40, 0.2],
	["most of one cannot be", 60, 1, 40, 0.2],
	["most of the other cannot be", 60, 0.1, 40, 1],
	["one is very long", 4, 1, 5000, 1],
	["so many that it is done by transforms", 600, 1, 420, 1],
])("a sum is every product added up: %s", (_what, length, share, otherLength, otherShare) => {
	const a = anyCount(2, length, share, 1);
	const b = anyCount(5, otherLength, otherShare, 2);
	const wanted = new Float64Array(length + otherLength - 1);
	a.chance.forEach((p, i) => {
		b.chance.forEach((q, j) => {
			wanted[i + j] = (wanted[i + j] as number) + p * q;
		});
	});
	for (const [one, other] of [
		[a, b],
		[b, a],
	] as const)
		for (const most of [Number.POSITIVE_INFINITY, 7 + wanted.length - 1, 7 + (length >> 1), 7, 6]) {
			const { first, chance } = passingSum(one, other, most);
			const end = Math.min(most, 7 + wanted.length - 1);
			if (most < 7) {
				expect([first, ...chance]).toEqual([6, 0]);
				continue;
			}
			expect(first).toBeGreaterThanOrEqual(7);
			expect(first + chance.length - 1).toBeLessThanOrEqual(end);
			for (let amount = 7; amount <= end; amount += 1 + (length >> 6))
				expectWithin(chance[amount - first] ?? 0, wanted[amount - 7] as number, 1e-15, "chance");
		}
});

test("what was added up before leaves nothing behind", () => {
	const [wide, narrow] = [anyCount(0, 900, 1, 3), anyCount(0, 700, 0.05, 4)];
	passingSum(wide, anyCount(0, 80, 1, 5));
	const found = passingSum(narrow, { first: 0, chance: Float64Array.of(1) });
	expect([...found.chance]).toEqual([...narrow.chance]);
});

test("of very many amounts with spaces between them every one is added up", () => {
	// Two numbers beside each other's 1,500: too few products for a transform.
	const many = {
		first: 0,
		chance: Float64Array.from({ length: 6000 }, (_, i) => (i % 4 ? 0 : 1 / 1500)),
	};
	const two = { first: 0, chance: new Float64Array(9000) };
	two.chance.set([0.5], 0);
	two.chance.set([0.5], 8999);
	const { first, chance } = passingSum(many, two);
	expect([first, chance.length]).toEqual([0, 14_996]);
	for (const amount of [0, 4000, 5996, 8999, 8999 + 5996]) expect(chance[amount]).toBe(0.5 / 1500);
	expect(chance[4001]).toBe(0);
});

test("both ends are cut off where nobody could see them, and what is next to nothing is none", () => {
	const cut = TAIL * 1e-3;
	const chance = Float64Array.of(cut / 2, cut / 3, 0.5, cut * 1e-15, 0.5, cut / 2);
	const found = passingSum({ first: 3, chance }, { first: 0, chance: Float64Array.of(1) });
	expect([found.first, ...found.chance]).toEqual([5, 0.5, 0, 0.5]);
});
