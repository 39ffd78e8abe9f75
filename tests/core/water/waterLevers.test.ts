import { expect, test } from "vitest";
import type { Hearth, WaterNeed } from "../../../src/core/water/batch.ts";
import { waterLevers } from "../../../src/core/water/waterLevers.ts";

/** Twenty litres boil within the hour, and are cool four hours later. */
const hearth: Hearth = {
	stoves: 1,
	pots: 1,
	potsOnStove: 1,
	potLitres: 20,
	netKw: 3,
	drawnC: 25,
	boilingC: 100,
	holdMinutes: 1,
	coolMinutes: 240,
	keepsMinutes: 1440,
};
const need = (litres: number, hour: number): WaterNeed => ({
	litres,
	from: hour * 60,
	until: hour * 60 + 30,
});
const levers = (needs: readonly WaterNeed[], change: Partial<Hearth> = {}) =>
	waterLevers(needs, { ...hearth, ...change }, 10);

test.each<[string, readonly WaterNeed[], Partial<Hearth>, number | undefined]>([
	["nothing is needed", [], {}, undefined],
	["what one holds", [need(20, 32)], {}, 1],
	["a little more", [need(20.5, 32)], {}, 2],
	["each round has its own", [need(15, 32), need(15, 38)], {}, 2],
	["as many as the day that needs most", [need(10, 32), need(50, 56), need(30, 80)], {}, 3],
	["too old by the last round", [need(20, 32), need(20, 44)], { keepsMinutes: 600 }, undefined],
	[
		"a load of pieces has one of its own",
		[need(20, 32), { litres: 5, from: 2010, until: 2030, isForPieces: true }],
		{},
		2,
	],
])("pots for boiling in one evening what the next day needs: %s", (_what, needs, change, pots) => {
	expect(levers(needs, change).eveningPots).toBe(pots);
});

test.each<[string, readonly WaterNeed[], Partial<Hearth>, object]>([
	[
		"one pot, in which the water of one bucket of four is boiled in time",
		[need(40, 10)],
		{},
		{ bucketLitres: 5, pots: 2, stoves: undefined },
	],
	[
		"one pot that is still cooling when the second round asks for it",
		[need(20, 10), need(20, 12)],
		{},
		{ bucketLitres: undefined, coolMinutes: 165, pots: 2, stoves: undefined },
	],
	[
		"one pot, for which only the smallest bucket and the quickest cooling do",
		[need(100, 10)],
		{},
		{ bucketLitres: 2, coolMinutes: 15, pots: 5, stoves: undefined },
	],
	[
		"one pot, and neither of them does",
		[need(120, 10)],
		{},
		{ bucketLitres: undefined, coolMinutes: undefined, pots: 6, stoves: undefined },
	],
	[
		"one stove on which two pots cannot be heated in time",
		[need(20, 10), need(20, 10)],
		{ pots: 2 },
		{ bucketLitres: 8, pots: undefined, stoves: 2 },
	],
])("%s", (_what, needs, change, found) => {
	expect(levers(needs, { keepsMinutes: 300, ...change })).toMatchObject(found);
});
