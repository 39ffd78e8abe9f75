import { expect, test } from "vitest";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { roundWithMostKits } from "../../../src/core/rounds/roundWithMostKits.ts";

const day = (...kits: number[]): RoundsOfDay => ({
	kind: "in_rounds",
	starts: kits.map((_, i) => 420 + i * 300),
	kits,
	byKind: [kits],
});

test.each([
	["the one with the largest mean", [day(0.2, 0.5, 0.3)], 1],
	["on whatever day", [day(0.2, 0.5, 0.3), day(0.1, 0.2, 0.6)], 2],
	["whatever an earlier one brings on another day", [day(0.2, 0.5), day(0.4, 0.1)], 1],
	["the first of a day without kits", [day(0, 0, 0)], 0],
	["the earlier of equal ones", [day(0.2, 0.5), day(0.5, 0.5)], 0],
	["though rounding makes them differ", [day(0.1 + 0.2, 0.3), day(0.3, 0.1 + 0.2)], 0],
	["after each use there is one", [{ kind: "after_each_use", kits: [3], byKind: [[3]] }], 0],
] as const)("%s", (_name, days, round) => {
	expect(roundWithMostKits(days)).toBe(round);
});
