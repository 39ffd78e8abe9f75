import { expect, test } from "vitest";
import type { Counts } from "../../../src/core/counts/counts.ts";
import { FollowedAmounts } from "../../../src/core/stock/followedAmounts.ts";

const counts = (first: number, ...chance: number[]): Counts => ({
	first,
	chance: Float64Array.from(chance),
});
const followed = (...parts: (readonly [Counts, by: number, more: number])[]) => {
	const amounts = new FollowedAmounts();
	for (const part of parts) amounts.addPart(...part);
	return amounts;
};
const said = ({ isPossible, counts: { first, chance } }: FollowedAmounts) =>
	isPossible ? [first, ...chance] : [];
const pair = counts(2, 0.5, 0.25);

test.each([
	["nothing so far", [], []],
	["a count", [[pair, 1, 0]], [2, 0.5, 0.25]],
	["with a chance", [[pair, 0.5, 0]], [2, 0.25, 0.125]],
	["with none it is not", [[pair, 0, 0]], []],
	[
		"nor is it with what it is besides",
		[
			[pair, 1, 0],
			[pair, 0, 9],
		],
		[2, 0.5, 0.25],
	],
	["with an amount added", [[pair, 1, 3]], [5, 0.5, 0.25]],
	["shared between two", [[pair, 1, 0.25]], [2, 0.375, 0.3125, 0.0625]],
	["with a chance, and shared", [[pair, 0.5, 1.5]], [3, 0.125, 0.1875, 0.0625]],
	[
		"two, one after the other",
		[
			[pair, 1, 0],
			[pair, 1, 3],
		],
		[2, 0.5, 0.25, 0, 0.5, 0.25],
	],
	[
		"or the other way round",
		[
			[pair, 1, 3],
			[pair, 1, 0],
		],
		[2, 0.5, 0.25, 0, 0.5, 0.25],
	],
	[
		"over each other",
		[
			[pair, 1, 0],
			[pair, 1, 1],
		],
		[2, 0.5, 0.75, 0.25],
	],
	[
		"within what there is",
		[
			[counts(0, 1, 0, 0, 0, 1), 1, 0],
			[pair, 1, 0.5],
		],
		[0, 1, 0, 0.25, 0.375, 1.125],
	],
] as const)("amounts used: %s", (_what, parts, expected) => {
	expect(said(followed(...parts))).toEqual(expected);
});

test("to begin with nothing is used for sure, and each thing that comes is added", () => {
	const amounts = new FollowedAmounts();
	amounts.come(new FollowedAmounts(), pair, 9);
	expect(said(amounts)).toEqual([]);
	const none = new FollowedAmounts();
	none.begin();
	expect(said(none)).toEqual([0, 1]);
	amounts.come(none, pair, 9);
	expect(said(amounts)).toEqual([2, 0.5, 0.25]);
	amounts.come(amounts, pair, 5);
	expect(said(amounts)).toEqual([2, 0.5, 0.25, 0.25, 0.25]);
	amounts.weigh(0.5);
	expect(said(amounts)).toEqual([2, 0.25, 0.125, 0.125, 0.125]);
	amounts.add(pair);
	expect(said(amounts)).toEqual([2, 0.75, 0.375, 0.125, 0.125]);
});

test("there is room for as many as come, and what was there stays", () => {
	const amounts = followed([pair, 1, 0], [pair, 1, 62], [pair, 1, 1000.5]);
	const { first, chance } = amounts.counts;
	expect([first, chance.length]).toEqual([2, 1003]);
	const some = [...chance].flatMap((p, i) => (p === 0 ? [] : [[first + i, p]]));
	expect(some).toEqual([
		[2, 0.5],
		[3, 0.25],
		[64, 0.5],
		[65, 0.25],
		[1002, 0.25],
		[1003, 0.375],
		[1004, 0.125],
	]);
});
