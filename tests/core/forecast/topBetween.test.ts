import { expect, test } from "vitest";
import { bestDiscount } from "../../../src/core/forecast/bestDiscount.ts";
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
