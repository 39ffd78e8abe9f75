import { expect, test } from "vitest";
import { atLevel, kitsAtLevel, kitsOfRoundAt } from "../../../src/core/rounds/atLevel.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";

const level = { mean: 1, levelShape: 10, daySpread: 0 };
const day: RoundsOfDay = {
	kind: "in_rounds",
	starts: [420, 840],
	kits: [3, 5.25],
	byKind: [
		[1, 2],
		[2, 3.25],
	],
	forecast: {
		level,
		sure: [
			[1, 0],
			[0.5, 0.25],
		],
	},
};

test("what is sure stays, and the rest goes with the level", () => {
	expect(atLevel(day, 2)).toEqual({
		kind: "in_rounds",
		starts: [420, 840],
		kits: [4.5, 10.25],
		byKind: [
			[1, 4],
			[3.5, 6.25],
		],
	});
	expect(atLevel(day, 0)).toMatchObject({ kits: [1.5, 0.25] });
});

test("what goes with the level is all but what is sure", () => {
	expect(kitsAtLevel(day)).toBe(6.5);
	expect(kitsAtLevel({ ...day, forecast: { level, sure: [[0], [0.5, 1.5]] } })).toBe(6.25);
	expect(kitsAtLevel(atLevel(day, 2))).toBe(0);
});

test("at the level itself, and where nothing is forecast, kits are the same to the last digit", () => {
	const { forecast: _, ...known } = day;
	expect(atLevel(day, 1).kits).toBe(day.kits);
	expect(atLevel(day, 1)).toEqual(known);
	expect(atLevel(known, 2)).toEqual(known);
});

test("one of its rounds alone is as among all of them", () => {
	const { forecast: _, ...known } = day;
	for (const each of [day, known])
		for (const factor of [0, 0.3, 1, 2.7])
			expect([0, 1].map((round) => kitsOfRoundAt(each, round, factor))).toEqual(
				atLevel(each, factor).kits,
			);
});
