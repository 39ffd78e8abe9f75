import fc from "fast-check";
import { expect, test } from "vitest";
import {
	alikeBatches,
	type Batch,
	batchesOf,
	type Hearth,
	type WaterNeed,
} from "../../../src/core/water/batch.ts";
import { haveRoom } from "../../../src/core/water/haveRoom.ts";
import { placedBatches } from "../../../src/core/water/placedBatches.ts";
import { always } from "../../properties/workbooks.ts";

/** An hour on a stove and two in its pots, some time from minute 0 to 180. */
const batch: Batch = {
	need: 0,
	litres: 10,
	startLitres: 10,
	pots: 2,
	heatMinutes: 60,
	kj: 1,
	stoveMinutes: 60,
	potMinutes: 120,
	earliestEnd: 60,
	latestEnd: 120,
	isForPieces: false,
};

test.each([
	["no batch", 0, 1, 1, true],
	["one in its pots", 1, 1, 2, true],
	["one with a pot too few", 1, 1, 1, false],
	["two on one stove, 120 minutes of 120", 2, 1, 4, true],
	["three on one stove", 3, 1, 6, false],
	["three on two stoves, in 720 minutes of pots", 3, 2, 4, true],
	["and of 540", 3, 2, 3, false],
])("%s", (_, count, stoves, pots, wanted) => {
	const each = Array.from({ length: count }, () => ({ batch, times: 1 }));
	expect(haveRoom(each, { stoves, pots })).toBe(wanted);
	const alike = count === 0 ? [] : [{ batch, times: count }];
	expect(haveRoom(alike, { stoves, pots })).toBe(wanted);
});

test("whatever finds its place has room, and of what has none some finds none", () => {
	const whole = (min: number, max: number) => fc.integer({ min, max });
	const needs = fc.array(
		fc.record({ litres: fc.constantFrom(4, 10, 30), from: whole(0, 900), lasts: whole(0, 60) }),
		{ minLength: 1, maxLength: 8 },
	);
	let [room, none] = [0, 0];
	fc.assert(
		fc.property(needs, whole(1, 3), whole(1, 5), whole(0, 300), (list, stoves, pots, cool) => {
			const hearth: Hearth = {
				stoves,
				pots,
				potsOnStove: 2,
				potLitres: 10,
				netKw: 1,
				drawnC: 20,
				boilingC: 100,
				holdMinutes: 1,
				coolMinutes: cool,
				keepsMinutes: 400,
			};
			const water = list.map(({ lasts, ...of }): WaterNeed => ({ ...of, until: of.from + lasts }));
			const batches = water.flatMap((need, i) => batchesOf(need, i, hearth));
			const alike = water.flatMap((need, i) => alikeBatches(need, i, hearth));
			expect(alike.flatMap(({ batch: one, times }) => Array(times).fill(one))).toEqual(batches);
			const { without } = placedBatches(batches, hearth);
			if (without.length === 0) expect(haveRoom(alike, hearth)).toBe(true);
			if (haveRoom(alike, hearth)) room++;
			else none++;
		}),
		always(300),
	);
	expect(Math.min(room, none)).toBeGreaterThan(30);
});
