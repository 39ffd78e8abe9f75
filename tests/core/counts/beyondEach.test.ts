import { expect, test } from "vitest";
import {
	atLeastEach,
	beyondAsFarAs,
	beyondEach,
	beyondOne,
} from "../../../src/core/counts/beyondEach.ts";
import { expectedBeyond } from "../../../src/core/counts/poisson.ts";
import { expectWithin } from "../../expectWithin.ts";

test.each([0, 0.002, 0.5, 3, 40, 900])("as one by one, mean %d", (mean) => {
	const most = 60;
	const beyond = beyondEach(most, mean);
	const atLeast = atLeastEach(most, mean);
	expect(atLeast[0]).toBe(1);
	for (let c = 0; c <= most; c++) {
		const one = expectedBeyond(c, mean);
		expectWithin(beyond[c], one, 1e-11 * one, "uses beyond");
		// The chance of at least c is what one kit more would have spared.
		const chance = c === 0 ? 1 : expectedBeyond(c - 1, mean) - one;
		expectWithin(atLeast[c], chance, 1e-9 * chance, "chance of at least");
	}
});

test("of a large mean, what is far beyond it keeps its digits", () => {
	const [beyond, atLeast] = [beyondEach(1200, 900), atLeastEach(1200, 900)];
	for (const c of [899, 1100, 1150, 1199, 1200]) {
		const one = expectedBeyond(c, 900);
		expectWithin(beyond[c], one, 1e-10 * one, "uses beyond");
		const chance = expectedBeyond(c - 1, 900) - one;
		expectWithin(atLeast[c], chance, 1e-9 * chance, "chance of at least");
	}
});

test("what is tiny keeps its digits", () => {
	expectWithin(beyondEach(12, 0.01)[10], 1e-22 / 39_916_800, 1e-24 / 39_916_800, "uses beyond");
});

test.each([0, 0.3, 7, 599, 900])(
	"one number alone, and a list that goes further, mean %d",
	(mean) => {
		for (const count of [1, 8, 60, 61, 95]) {
			expect(beyondOne(count, mean)).toBe(beyondEach(count, mean)[count]);
			const further = beyondAsFarAs(count, mean);
			expect(further.length).toBeGreaterThan(count);
			const one = expectedBeyond(count, mean);
			expectWithin(further[count], one, 1e-10 * one, "uses beyond");
		}
	},
);

test("one number alone does not go by what was asked before", () => {
	beyondOne(20, 50);
	// 2⁶¹ ÷ 61! and less so far beyond: only a term left over from the 50 could be seen.
	const beyond = beyondOne(20, 2);
	expectWithin(beyond, beyondEach(20, 2)[20] as number, 1e-15 * beyond, "uses beyond");
});

test("one number after the other, also where its terms just fill the room that is kept for them", () => {
	for (let count = 0; count <= 2000; count++)
		expect(beyondOne(count, 100)).toBe(beyondEach(count, 100)[count]);
});
