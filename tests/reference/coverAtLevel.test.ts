import { describe, expect, test } from "vitest";
import { laguerreNodes } from "../../src/core/counts/laguerreNodes.ts";
import { readyAt } from "../../src/core/kits/readyAt.ts";
import type { Reprocessing } from "../../src/core/kits/reprocessing.ts";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { flatDay } from "../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../expectWithin.ts";
import { gammaDraw } from "./draws.ts";
import { meanOfBatches, randomNumbers } from "./randomNumbers.ts";

const rounds = (usesPerDay: readonly number[]): Reprocessing => ({
	kind: "in_rounds",
	starts: [420, 840, 1260],
	length: { perRound: 40, perKit: 10, loads: [{ minutes: 20, kits: 3 }] },
	plannedMinutes: 120,
	usesPerDay,
	hourShares: flatDay,
	life: null,
});
const oneByOne = (usesPerDay: readonly number[]): Reprocessing => ({
	kind: "after_each_use",
	usesPerDay,
	hourShares: flatDay,
	hands: { people: Number.POSITIVE_INFINITY, workMinutes: 110, aloneMinutes: 0 },
	readyLifeDays: null,
});
const forecast = (reprocessing: Reprocessing, shape: number, sure = [0, 0]): Reprocessing => ({
	...reprocessing,
	forecast: { shape, sure },
});

describe("needs that find no kit, mixed over the level", () => {
	const cases = (
		[
			[0.6, 3],
			[1, 4],
			[7.5, 10],
			[25, 24],
		] as const
	).flatMap(([uses, kits]) => [3, 8, 25, 100, 600].map((shape) => [uses, kits, shape] as const));

	test.each(cases)("%d uses a day, %d kits, shape %d: as 40 nodes say", (uses, kits, shape) => {
		for (const of of [rounds, oneByOne]) {
			let unmet = 0;
			let all = 0;
			for (const { factor, weight } of laguerreNodes(shape, 40)) {
				// Rounds of 22, 22 and 33 kits end before the next: no level counts as more than 95 in 100 of them.
				const there = of === rounds ? Math.min(uses * factor, 0.95 * 77) : uses * factor;
				unmet += weight * there * unmetPer1000(kits, of([there, there]));
				all += weight * there;
			}
			const found = unmetPer1000(kits, forecast(of([uses, uses]), shape));
			expectWithin(found, unmet / all, 0.01 * (unmet / all) + 1e-6, "per 1,000");
		}
	});

	test("as levels drawn at random say", () => {
		const random = randomNumbers(6);
		const batches = Array.from({ length: 40 }, () => {
			let unmet = 0;
			let uses = 0;
			for (let i = 0; i < 50; i++) {
				const factor = gammaDraw(25, random);
				unmet += factor * unmetPer1000(10, rounds([7.5 * factor, 7.5 * factor]));
				uses += factor;
			}
			return unmet / uses;
		});
		const { mean, standardError } = meanOfBatches(batches);
		const found = unmetPer1000(10, forecast(rounds([7.5, 7.5]), 25));
		expectWithin(found, mean, 4 * standardError, "per 1,000");
		expect(found).toBeGreaterThan(2 * unmetPer1000(10, rounds([7.5, 7.5])));
	});

	test("what does not go with the forecast is not mixed, and a known level changes nothing", () => {
		const known = rounds([7.5, 7.5]);
		const exact = unmetPer1000(10, known);
		expectWithin(unmetPer1000(10, forecast(known, 3, [7.5, 7.5])), exact, 1e-9, "per 1,000");
		expect(unmetPer1000(10, forecast(known, 1e9))).toBe(exact);
		const half = unmetPer1000(10, forecast(known, 3, [7.5, 0]));
		expect(half).toBeGreaterThan(unmetPer1000(10, known));
		expect(half).toBeLessThan(unmetPer1000(10, forecast(known, 3)));
	});

	test("the less is known, the more needs find none; more kits never make it worse", () => {
		const shapes = [600, 100, 25, 8, 3].map((shape) => forecast(rounds([6, 6]), shape));
		const unmet = shapes.map((each) => unmetPer1000(8, each));
		expect(unmet).toEqual([...unmet].sort((a, b) => a - b));
		for (const each of shapes)
			for (let kits = 1; kits < 12; kits++)
				expect(unmetPer1000(kits + 1, each)).toBeLessThan(unmetPer1000(kits, each));
	});
});

test("through the day: the mean of the risk over the day is the unmet share of cover", () => {
	const days = forecast(rounds([6, 6, 6]), 8, [0, 0, 0]);
	let sum = 0;
	const step = 10;
	for (let minute = step / 2; minute < 3 * 1440; minute += step)
		sum += readyAt(8, days, minute).nonePer1000;
	const cover = unmetPer1000(8, days);
	expectWithin((sum * step) / (3 * 1440), cover, 0.03 * cover, "per 1,000"); // the first day begins with the plan's own evening
});
