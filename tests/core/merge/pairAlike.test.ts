import { expect, test } from "vitest";
import { pairAlike } from "../../../src/core/merge/pairAlike.ts";
import { ALONE, noPairs } from "../../../src/core/merge/pairs.ts";

/** Who is paired with whom, by how much each row has in common with each of the others. */
function paired(shares: readonly (readonly number[])[]): number[] {
	const rows = (count: number) => ({ header: [], rows: Array.from({ length: count }, () => []) });
	const others = shares[0]?.length ?? 0;
	const pairs = noPairs(rows(shares.length), rows(others));
	const places = (count: number) => Array.from({ length: count }, (_, at) => at);
	const alike = (one: number, other: number) => shares[one]?.[other] as number;
	pairAlike(pairs, places(shares.length), places(others), alike);
	return [...pairs.ofOne];
}

test.each([
	["the most alike", [[0.6, 0.9]], [1]],
	["though they come later", [[0.6], [0.9]], [ALONE, 0]],
	["half is enough", [[0.5]], [0]],
	["less is not", [[0.49]], [ALONE]],
	[
		"each with one",
		[
			[0.9, 0.8],
			[0.8, 0.1],
		],
		[0, ALONE],
	],
	[
		"the others with what is left",
		[
			[0.9, 0.8],
			[0.8, 0.5],
		],
		[0, 1],
	],
])("pairs are %s", (_what, shares, expected) => {
	expect(paired(shares)).toEqual(expected);
});

test("very many rows in the same order find each other; a hundred that are alike to none end it", () => {
	const places = Array.from({ length: 250 }, (_, at) => at);
	const beside = (one: number, other: number) => (one === other ? 0.6 : 0.1);
	expect(paired(places.map((one) => places.map((other) => beside(one, other))))).toEqual(places);
	const after = (more: number) =>
		paired([Array.from({ length: more + 1 }, (_, at) => (at < more ? 0.1 : 1))]);
	expect([after(99), after(100)]).toEqual([[99], [ALONE]]);
});
