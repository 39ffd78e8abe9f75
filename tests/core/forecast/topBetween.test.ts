import { expect, test } from "vitest";
import { bestDiscount } from "../../../src/core/forecast/bestDiscount.ts";
import { discountedFilter } from "../../../src/core/forecast/discountedFilter.ts";
import { topBetween } from "../../../src/core/forecast/topBetween.ts";
import { expectWithin } from "../../expectWithin.ts";

const CLOSE = 1e-6;

test.each<[string, (x: number) => number, number[], number]>([
	["a parabola", (x) => -((x - 0.3) ** 2), [0, 0.5, 1], 0.3],
	["a wave", (x) => Math.sin(x), [0, 1, 3], Math.PI / 2],
	["steeper on one side", (x) => 20 * x - Math.exp(8 * x), [0, 0.2, 1], Math.log(2.5) / 8],
	["flatter than a parabola", (x) => -((x - 0.99) ** 4), [0.98, 0.992, 1], 0.99],
	[
		"a first parabola that hardly moves",
		(x) => -((x - 0.5001) ** 2) * (2 - x),
		[0, 0.5, 1],
		0.5001,
	],
	["the same everywhere", () => 1, [0, 0.5, 1], 0.5],
])("%s", (_what, score, places, top) => {
	let asked = 0;
	const found = topBetween(
		(at) => {
			asked++;
			return score(at);
		},
		places.map((at) => ({ at, score: score(at) })) as never,
		CLOSE,
	);
	expectWithin(found, top, 2 * CLOSE, "from the top");
	expect(asked).toBeLessThan(16);
});

/** A register that doubles half way, and none of its days alike in the end. */
const risen = Array.from({ length: 60 }, (_, day) => (day < 30 ? 4 : 8) + (day % 3) - 1);

test.each<[string, (number | null)[], number, number]>([
	["a level that never moves keeps all it knows", Array.from({ length: 60 }, () => 5), 1, 1],
	["one that moves on each day keeps the least", [1, 30, 2, 40, 1, 60, 2, 90, 1, 200], 0.8, 0.8],
	["one that doubled keeps some", risen, 0.81, 0.99],
])("the discount of a register: %s", (_what, counts, least, most) => {
	const found = bestDiscount(counts, [1]);
	expect(found).toBeGreaterThanOrEqual(least);
	expect(found).toBeLessThanOrEqual(most);
});

/** Registers whose top lies between an end of the grid and its neighbour. */
test.each<[string, number[], [number, number]]>([
	[
		"the most that is let go",
		[7, 4, 1, 6, 4, 0, 4, 2, 4, 3, 2, 6, 5, 7, 4, 10, 5, 5, 5, 7, 6, 5, 6, 3, 7, 10, 4, 2, 2, 4],
		[0.8, 0.805],
	],
	[
		"the least that is let go",
		[4, 4, 3, 10, 10, 12, 3, 6, 9, 3, 6, 11, 6, 9, 7, 8, 5, 7, 7, 7, 10, 4, 7, 3],
		[0.995, 1],
	],
])("near %s the discount is the likeliest of all", (_what, counts, [from, to]) => {
	const score = (discount: number) => discountedFilter(counts, [1], { discount }).logLikelihood;
	const tried = Array.from({ length: 401 }, (_, i) => from + ((to - from) * i) / 400);
	const best = tried.reduce((one, other) => (score(other) > score(one) ? other : one));
	expect(best).toBeGreaterThan(from);
	expect(best).toBeLessThan(to);
	expectWithin(bestDiscount(counts, [1]), best, (to - from) / 400, "discount");
});
