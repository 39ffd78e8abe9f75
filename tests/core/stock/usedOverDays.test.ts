import { expect, test } from "vitest";
import { type Counts, mean } from "../../../src/core/counts/counts.ts";
import { momentsOf } from "../../../src/core/counts/moments.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import type { Steps } from "../../../src/core/stock/commonStep.ts";
import { usedOverDays } from "../../../src/core/stock/usedOverDays.ts";
import { expectWithin } from "../../expectWithin.ts";

const level = { mean: 0.6, levelShape: 20, daySpread: 0 };
const known: RoundsOfDay = {
	kind: "in_rounds",
	starts: [420, 1140],
	kits: [0.3, 0.3],
	byKind: [[0.3, 0.3]],
};
const forecast: RoundsOfDay = { ...known, forecast: { level, sure: [[0, 0]] } };
/** Ten for a kit and one for a descaling, which over many days is hardly any of all. */
const rates = { perDay: 0, perRound: 0, perLoad: [0], perKit: [10] };
const steps: Steps = { size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY };

function used(day: RoundsOfDay, days: number, perDescale: number, descaleEvery: number): Counts {
	const all = Array.from({ length: days }, () => day);
	const use = { rates: { ...rates, perDescale }, days: all, loads: soaks(3), descaleEvery };
	return usedOverDays(use, steps);
}

test.each([
	[2, "known", known],
	[40, "known", known],
	[2, "forecast", forecast],
	[40, "forecast", forecast],
] as const)("descalings over %d days, births %s", (days, _, day) => {
	const without = used(day, days, 0, 3);
	// Never descaled, what a descaling takes is used on no day.
	expect(used(day, days, 1, 0)).toEqual(without);
	const rounds = meanOf(days, day);
	const more = mean(used(day, days, 1, 3)) - mean(without);
	// A third of the rounds, and up to the one that is begun.
	expect(more).toBeGreaterThan(rounds / 3 - 0.01);
	expect(more).toBeLessThan(rounds / 3 + 0.7);
	// A third of many rounds, rounded up, is 0, 2/3 or 1/3 more: those are counted, and no fewer.
	if (days > 31) expect(more).toBeGreaterThan(rounds / 3 + 1 / 3 - 0.01);
});

/** Kits of two kinds, of which one takes 100 and the other 70, in a round that takes 40. */
const differ = { perDay: 0, perRound: 40, perLoad: [0], perKit: [100, 70] };
const ofTwo = (...kits: number[]): RoundsOfDay => ({
	kind: "in_rounds",
	starts: kits.map((_, i) => 60 * i),
	kits: kits.map((each) => 2 * each),
	byKind: [kits, kits],
});
const shared = { mean: 2, levelShape: 2, daySpread: 0 };
const usedBy = (days: readonly RoundsOfDay[], perDescale: number, descaleEvery: number) =>
	usedOverDays({ rates: { ...differ, perDescale }, days, loads: soaks(3), descaleEvery }, steps);

/** Mean over a Gamma level of shape 2, whose density is 4g·e^(−2g). */
function overLevel(of: (level: number) => number): number {
	const STEP = 1e-3;
	let sum = 0;
	for (let g = STEP / 2; g < 20; g += STEP) sum += of(g) * 4 * g * Math.exp(-2 * g) * STEP;
	return sum;
}

/** Mean number of descalings of so many rounds, each of which runs with the same chance. */
function descalings(rounds: number, runs: number, every: number): number {
	let chance = (1 - runs) ** rounds;
	let sum = 0;
	for (let n = 1; n <= rounds; n++) {
		chance *= ((rounds - n + 1) * runs) / (n * (1 - runs));
		sum += chance * Math.ceil(n / every);
	}
	return sum;
}

test.each([
	["without descalings", 0, 0],
	["with a descaling in each round", 300, 1],
])("a day whose births are known beside one whose level is not, %s", (_what, perDescale, every) => {
	const forecast = { ...ofTwo(1), forecast: { level: shared, sure: [[0], [0]] } };
	const each = 40 + perDescale;
	// A round of a Poisson number of kits each of 100 and of 70: its mean, and its mean square.
	const mean = (g: number) => each * -Math.expm1(-2 * g) + 170 * g;
	const square = (g: number) =>
		each ** 2 * -Math.expm1(-2 * g) + 2 * each * 170 * g + 14_900 * g + (170 * g) ** 2;
	const variance = square(1) - mean(1) ** 2 + overLevel(square) - overLevel(mean) ** 2;
	for (const days of [
		[forecast, ofTwo(1)],
		[ofTwo(1), forecast],
	]) {
		const found = momentsOf(usedBy(days, perDescale, every));
		expectWithin(found.mean, mean(1) + overLevel(mean), 0.5, "mean");
		expectWithin(found.variance, variance, 0.01 * variance, "variance");
	}
});

test.each([
	["over many days, where they are much of all", 32, ofTwo(0.2), 300],
	["over few days, where they are hardly any", 4, ofTwo(0.2), 1],
] as const)("descalings go with the rounds that run %s", (_what, days, day, perDescale) => {
	const all = new Array<RoundsOfDay>(days).fill(day);
	const more = mean(usedBy(all, perDescale, 3)) - mean(usedBy(all, 0, 3));
	expectWithin(more / perDescale, descalings(days, -Math.expm1(-0.4), 3), 1e-6, "descalings");
});

test("and at the level of births that few days share", () => {
	const forecast = {
		...ofTwo(0.3),
		forecast: { level: { ...shared, mean: 0.6 }, sure: [[0], [0]] },
	};
	const all = new Array<RoundsOfDay>(4).fill(forecast);
	const more = mean(usedBy(all, 1, 3)) - mean(usedBy(all, 0, 3));
	const wanted = overLevel((g) => descalings(4, -Math.expm1(-0.6 * g), 3));
	expectWithin(more, wanted, 0.02, "descalings");
});

test("what is never descaled takes nothing for it, also over many days whose level is not known", () => {
	const forecast = {
		...ofTwo(0.2),
		forecast: { level: { ...shared, mean: 0.4 }, sure: [[0], [0]] },
	};
	const all = new Array<RoundsOfDay>(32).fill(forecast);
	expect(usedBy(all, 300, 0)).toEqual(usedBy(all, 0, 3));
});

/** Rounds that run, births at their average. */
function meanOf(days: number, { kits }: RoundsOfDay): number {
	return days * kits.reduce((sum, each) => sum - Math.expm1(-each), 0);
}
