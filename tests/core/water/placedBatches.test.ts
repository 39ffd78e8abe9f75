import { expect, test } from "vitest";
import type { Batch, Hearth } from "../../../src/core/water/batch.ts";
import { placedBatches } from "../../../src/core/water/placedBatches.ts";

const hearth: Hearth = {
	stoves: 1,
	pots: 1,
	potsOnStove: 1,
	potLitres: 10,
	netKw: 1,
	drawnC: 20,
	boilingC: 100,
	holdMinutes: 1,
	coolMinutes: 0,
	keepsMinutes: 400,
};
/** An hour in the one pot on the one stove. */
const batch = (need: number, earliestEnd: number, latestEnd: number, pots = 1): Batch => ({
	need,
	litres: 10,
	startLitres: 10,
	pots,
	heatMinutes: 59,
	kj: 1,
	stoveMinutes: 60,
	potMinutes: 60,
	earliestEnd,
	latestEnd,
	isForPieces: false,
});
const placed = (...batches: Batch[]) => {
	const { placed, without } = placedBatches(batches, hearth);
	return { starts: placed.map(({ batch, start }) => [batch.need, start]), without };
};

const [early, late] = [batch(0, 185, 190), batch(1, 60, 200)];

test("what finds no place is tried in every order with what was placed before it", () => {
	expect(placed(early, late)).toEqual({
		starts: [
			[0, 130],
			[1, 70],
		],
		without: [],
	});
});

test("what had a place only in another order gives it back where the rest of its water has none", () => {
	expect(placed(early, late, batch(0, 180, 185))).toEqual({ starts: [[1, 70]], without: [0] });
});

test("once a need has no place in any order, others are placed once each: too little is there anyway", () => {
	expect(placed(early, late, batch(2, 60, 400, 2))).toEqual({
		starts: [[1, 140]],
		without: [0, 2],
	});
});
