import fc from "fast-check";
import { expect, test } from "vitest";
import { reachedBy } from "../../../src/core/counts/reachedBy.ts";

const thirds = Float64Array.of(1 / 3, 1 / 3, 1 / 3);

test.each([
	[0.1, 2],
	[0.5, 5],
	[0.9, 7],
])(
	"of 7, 2 and 5, each in a third of all cases, is enough with a chance of %d: %d",
	(level, amount) => {
		expect(reachedBy(Float64Array.of(7, 2, 5), thirds, level)).toBe(amount);
	},
);

test("amounts that are all the same are that", () => {
	expect(reachedBy(Float64Array.of(4, 4, 4), thirds, 0.99)).toBe(4);
});

test("where the chances do not add up to it, the largest is", () => {
	expect(reachedBy(Float64Array.of(7, 2, 5), Float64Array.of(0.1, 0.1, 0.1), 0.9)).toBe(7);
});

test("it is what amounts put in order and added up come to", () => {
	const way = fc.record({
		amount: fc.integer({ min: 0, max: 1000 }),
		parts: fc.integer({ min: 1, max: 64 }),
	});
	const ways = fc.array(way, { minLength: 1, maxLength: 60 });
	fc.assert(
		fc.property(ways, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (all, level) => {
			const amountOf = (i: number) => (all[i] as { amount: number }).amount;
			// Parts of a power of two add up without rounding, in whatever order.
			const chances = all.map(({ parts }) => parts / 4096);
			const total = chances.reduce((sum, chance) => sum + chance, 0);
			const order = all.map((_, i) => i).sort((a, b) => amountOf(a) - amountOf(b));
			const sums = order.map((_, last) =>
				order.slice(0, last + 1).reduce((sum, i) => sum + (chances[i] as number), 0),
			);
			const reached = order[sums.findIndex((sum) => sum >= level * total)] as number;
			const amounts = Float64Array.from(all, ({ amount }) => amount);
			expect(reachedBy(amounts, Float64Array.from(chances), level * total)).toBe(amountOf(reached));
		}),
		{ seed: 7, numRuns: 200 },
	);
});

test("an amount whose chances come to just the level is enough", () => {
	expect(reachedBy(Float64Array.of(7, 2, 5), Float64Array.of(0.25, 0.5, 0.25), 0.75)).toBe(5);
});
