import { expect, test } from "vitest";
import { momentsOf } from "../../../src/core/counts/moments.ts";
import { sumAtLevel } from "../../../src/core/counts/sumAtLevel.ts";
import { kitsOfDay, kitsOver } from "../../../src/core/rounds/kitsOver.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { roundsThatRun } from "../../../src/core/rounds/roundsThatRun.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

const level = { mean: 6, levelShape: 4, daySpread: 0 };
const known: RoundsOfDay = { kind: "after_each_use", kits: [2], byKind: [[2]] };
const forecast: RoundsOfDay = {
	kind: "after_each_use",
	kits: [5],
	byKind: [[3], [2]],
	forecast: { level, sure: [[0.5], [0.25]] },
};

test.each([
	["a day that is known", [known], 2, 2],
	// 4.25 of 5 go with the level: they vary by 4.25² ÷ 4 more.
	["a forecast day", [forecast], 5, 5 + 4.25 ** 2 / 4],
	["days that share the level", [forecast, known, forecast], 12, 12 + 8.5 ** 2 / 4],
	["no kits at all", [{ ...known, kits: [0], byKind: [[0]] }], 0, 0],
] as const)("%s: mean and variance, worked by hand", (_what, days, mean, variance) => {
	const found = momentsOf(kitsOver(days));
	expectWithin(found.mean, mean, 1e-9, "kits");
	expectWithin(found.variance, variance, 1e-8, "");
});

test("days one by one add up to all of them, whatever one takes", () => {
	const days = [forecast, known, forecast];
	const counts = days.map(kitsOfDay);
	const [together, all] = [sumAtLevel(counts), kitsOver(days)];
	expect(together.first).toBe(all.first);
	for (let i = 0; i < 60; i++)
		expectWithin(together.chance[i] ?? 0, all.chance[i] ?? 0, 1e-12, `chance of ${i}`);
	const tenfold = momentsOf(sumAtLevel(counts, [10, 10, 10]));
	expectWithin(tenfold.mean, 120, 1e-8, "");
	expectWithin(tenfold.variance, 100 * (12 + 8.5 ** 2 / 4), 1e-6, "");
	const apart = momentsOf(sumAtLevel(counts, [10, 20, 10]));
	expectWithin(apart.mean, 140, 1e-6, "");
});

test("each kit is a round", () => {
	const { first, chance } = answerOf(roundsThatRun, { rounds: forecast });
	expect({ first, chance }).toEqual(kitsOver([forecast]));
});
