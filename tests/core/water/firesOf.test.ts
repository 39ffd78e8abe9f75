import { expect, test } from "vitest";
import type { Batch, Hearth } from "../../../src/core/water/batch.ts";
import { firesOf } from "../../../src/core/water/firesOf.ts";

const hearth: Hearth = {
	stoves: 2,
	pots: 3,
	potsOnStove: 2,
	potLitres: 10,
	netKw: 1,
	drawnC: 25,
	boilingC: 100,
	holdMinutes: 0,
	coolMinutes: 60,
	keepsMinutes: 1440,
};
/** A batch of 10 litres a pot, half an hour on the stove, cool an hour after. */
const lit = (start: number, need: number, pots = 1) => {
	const batch: Batch = {
		need,
		pots,
		litres: 10 * pots,
		startLitres: 11 * pots,
		heatMinutes: 29,
		kj: 100 * pots,
		stoveMinutes: 30,
		potMinutes: 90,
		latestEnd: 9999,
		earliestEnd: 0,
		isForPieces: false,
	};
	return { batch, start };
};
const fires = (...placed: readonly ReturnType<typeof lit>[]) =>
	firesOf(placed, hearth).map((fire) => [
		fire.need,
		fire.stove,
		fire.pots,
		fire.lightAt,
		fire.coolAt,
	]);

test("batches for one round that follow each other on a stove are one fire", () => {
	expect(firesOf([lit(30, 0, 1), lit(0, 0, 2)], hearth)).toEqual([
		{
			need: 0,
			stove: 1,
			pots: [1, 2, 3],
			litres: 30,
			startLitres: 33,
			batches: 2,
			heatMinutes: 58,
			kj: 300,
			lightAt: 0,
			offBoilAt: 60,
			coolAt: 120,
			taken: [
				{ pot: 1, from: 0, to: 90 },
				{ pot: 2, from: 0, to: 90 },
				{ pot: 3, from: 30, to: 120 },
			],
		},
	]);
});

test.each([
	[
		"for another round",
		[lit(0, 0), lit(30, 1)],
		[
			[0, 1, [1], 0, 90],
			[1, 1, [2], 30, 120],
		],
	],
	[
		"later",
		[lit(0, 0), lit(31, 0)],
		[
			[0, 1, [1], 0, 90],
			[0, 1, [2], 31, 121],
		],
	],
	[
		"at once",
		[lit(0, 0), lit(0, 0)],
		[
			[0, 1, [1], 0, 90],
			[0, 2, [2], 0, 90],
		],
	],
	[
		"a pot that is cool is filled again",
		[lit(0, 0), lit(90, 1)],
		[
			[0, 1, [1], 0, 90],
			[1, 1, [1], 90, 180],
		],
	],
	[
		"on the stove on which its own burnt, though another is free",
		[lit(0, 0), lit(0, 1), lit(30, 1)],
		[
			[0, 1, [1], 0, 90],
			[1, 2, [2, 3], 0, 120],
		],
	],
])("%s", (_what, placed, expected) => {
	expect(fires(...placed)).toEqual(expected);
});
