import { dnbinom, dpois } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import type { Counts } from "../../../src/core/counts/counts.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import type { Rates } from "../../../src/core/stock/ratesOfItem.ts";
import { usedByKits } from "../../../src/core/stock/usedByKits.ts";
import { expectWithin } from "../../expectWithin.ts";

const steps = { size: 1, of: (amount: number) => amount, more: 0, most: Number.POSITIVE_INFINITY };
const rates: Rates = { perDay: 0, perRound: 0, perLoad: [0], perKit: [3, 3], perDescale: 0 };
const SHAPE = 4;
/** Of 0.9 and 0.2 kits a day, a quarter of the first goes out of date. */
const day = {
	starts: [0],
	kits: [1.1],
	byKind: [[0.9], [0.2]],
	forecast: { level: { mean: 3, levelShape: SHAPE, daySpread: 0 }, sure: [[0.225], [0]] },
};
const inRounds: RoundsOfDay = { kind: "in_rounds", ...day };
const oneByOne: RoundsOfDay = { kind: "after_each_use", ...day };
const chanceOf = ({ first, chance }: Counts, use: number) => chance[use - first] ?? 0;

/** So many kits over two days that share one level: some of them by it, the others not (lib-r-math.js). */
function chanceOfKits(kits: number): number {
	let sum = 0;
	for (let known = 0; known <= kits; known++)
		sum +=
			Number(dpois(known, 2 * 0.225)) *
			Number(dnbinom(kits - known, SHAPE, SHAPE / (SHAPE + 2 * 0.875)));
	return sum;
}

describe("what goes by kits, however they come", () => {
	test.each([
		["kits of rounds", inRounds, rates, 0, (kits: number) => 3 * kits],
		["by the day too", inRounds, { ...rates, perDay: 2 }, 7, (kits: number) => 4 + 3 * kits],
		[
			"one by one, each a round and a load, and every second with a descaling",
			oneByOne,
			{ ...rates, perRound: 5, perLoad: [4], perDescale: 100 },
			2,
			(kits: number) => 12 * kits + 100 * Math.ceil(kits / 2),
		],
	])("%s", (_, each, of, descaleEvery, useOf) => {
		const use = { rates: of, days: [each, each], loads: soaks(3), descaleEvery };
		const found = usedByKits(use, steps) as Counts;
		for (let kits = 0; kits < 20; kits++)
			expectWithin(chanceOf(found, useOf(kits)), chanceOfKits(kits), 1e-12, `${kits} kits`);
	});
});

test.each([
	["rounds", { ...rates, perRound: 1 }],
	["loads", { ...rates, perLoad: [1] }],
	["descalings", { ...rates, perDescale: 1 }],
])("not where %s of kits together take something", (_, of) => {
	const use = { rates: of, days: [inRounds], loads: soaks(3), descaleEvery: 2 };
	expect(usedByKits(use, steps)).toBe(undefined);
});
