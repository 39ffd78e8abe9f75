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

/** Each batch by the earliest and the latest end of its hold, its minutes and its pots. */
test.each([
	[
		"in when they must be ready",
		1,
		[
			[260, 290, 30, 2],
			[210, 280, 30, 2],
			[260, 270, 30, 2],
		],
	],
	[
		"in how old they may be",
		1,
		[
			[110, 230, 60, 2],
			[170, 230, 60, 2],
			[200, 200, 30, 1],
		],
	],
	[
		"in their minutes",
		1,
		[
			[200, 260, 60, 1],
			[200, 260, 30, 1],
			[260, 260, 30, 2],
		],
	],
	[
		"in their pots",
		2,
		[
			[140, 230, 30, 1],
			[140, 200, 60, 1],
			[230, 230, 60, 2],
			[140, 230, 30, 2],
		],
	],
] as const)("batches that differ only %s are not taken for each other", (_what, stoves, of) => {
	const batches = of.map(([earliest, latest, minutes, pots], need) => ({
		...batch(need, earliest, latest, pots),
		stoveMinutes: minutes,
		potMinutes: minutes,
	}));
	const { placed, without } = placedBatches(batches, { ...hearth, stoves, pots: 2 });
	expect(without).toEqual([]);
	for (const { batch: each, start } of placed) {
		const end = start + each.stoveMinutes;
		expect(end >= each.earliestEnd && end <= each.latestEnd, `need ${each.need}`).toBe(true);
		const burning = placed.filter(
			(other) => other.start <= start && start < other.start + other.batch.stoveMinutes,
		);
		expect(burning.length).toBeLessThanOrEqual(stoves);
		expect(burning.reduce((sum, other) => sum + other.batch.pots, 0)).toBeLessThanOrEqual(2);
	}
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
