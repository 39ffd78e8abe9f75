import { qgamma } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import { type Counts, type GivenLevel, setAside } from "../../src/core/counts/counts.ts";
import { groupsOf } from "../../src/core/counts/groupsOf.ts";
import { mixedOver } from "../../src/core/counts/mixedOver.ts";
import { negativeBinomial } from "../../src/core/counts/negativeBinomial.ts";
import { poisson } from "../../src/core/counts/poisson.ts";
import { sumAtLevel } from "../../src/core/counts/sumAtLevel.ts";
import { sumOf } from "../../src/core/counts/sumOf.ts";
import { runningRounds } from "../../src/core/rounds/roundsThatRun.ts";
import { expectWithin } from "../expectWithin.ts";

interface Day {
	readonly mean: number;
}

/** Days of a week, quiet to busy, over and over. */
function daysOf(perDay: number, days: number): readonly Day[] {
	const week = Array.from({ length: 7 }, (_, i) => ({ mean: perDay * (0.8 + (0.4 * i) / 6) }));
	return Array.from({ length: days }, (_, i) => week[i % 7] as Day);
}
const parts = [0.3, 0.3, 0.4];
const measures: Record<string, (day: Day, factor: number) => Counts> = {
	rounds: ({ mean }, factor) => runningRounds(parts.map((part) => part * mean * factor)),
	loads: ({ mean }, factor) =>
		sumOf(parts.map((part) => groupsOf(poisson(part * mean * factor), 3))),
};

/** Days whose levels are one: as sure a year ahead as tomorrow. */
function atLevels(
	days: readonly Day[],
	levelShape: number,
	countsAt: (day: Day, factor: number) => Counts,
) {
	const each = new Map(
		[...new Set(days)].map((day) => {
			const level = { mean: day.mean, levelShape, daySpread: 0 };
			const at = (factor: number) => countsAt(day, factor);
			return [day, { given: { level, mean: day.mean, alike: String(day.mean), at } }] as const;
		}),
	);
	return days.map((day) => each.get(day) as { given: GivenLevel });
}

/** The level at 200 equally likely values, each the middle one of its two-hundredth. */
function midpoints(shape: number) {
	const middles = Array.from({ length: 200 }, (_, i) =>
		Number(qgamma((i + 0.5) / 200, shape, shape)),
	);
	return middles.map((factor) => ({ factor, weight: 1 / 200 }));
}

describe.each([1, 3, 10, 40])("a total of 40 and 90 days at a level of shape %d", (shape) => {
	test.each(
		Object.keys(measures).flatMap((name) =>
			[0.1, 1, 6].flatMap((perDay) => [40, 90].map((days) => [name, perDay, days] as const)),
		),
	)("%s, %d kits a day, %d days: within 1 in 100 of the exact sums", (name, perDay, days) => {
		const list = daysOf(perDay, days);
		const countsAt = measures[name] as (typeof measures)[string];
		const found = sumAtLevel(atLevels(list, shape, countsAt));
		const exact = mixedOver(midpoints(shape), (factor) => {
			const each = new Map([...new Set(list)].map((day) => [day, countsAt(day, factor)]));
			return sumOf(list.map((day) => each.get(day) as Counts));
		});
		// 200 midpoints themselves stop short of what comes once in a hundred times.
		for (const level of [0.8, 0.9, 0.95, 0.98]) {
			const wanted = setAside(exact, level);
			expectWithin(setAside(found, level), wanted, Math.max(1, 0.01 * wanted), `at ${level}`);
		}
	});
});

describe("kits alone are negative binomial, however many", () => {
	test.each(
		[1, 2, 5, 20, 60].flatMap((shape) => [0.1, 1, 6, 25].map((perDay) => [shape, perDay] as const)),
	)("shape %d, %d a day, a year", (shape, perDay) => {
		const mean = perDay * 364;
		const found = sumAtLevel(
			atLevels(daysOf(perDay, 364), shape, (day, factor) => poisson(day.mean * factor)),
		);
		const exact = negativeBinomial(shape, mean);
		for (const level of [0.9, 0.95, 0.98, 0.99]) {
			const wanted = setAside(exact, level);
			expectWithin(setAside(found, level), wanted, Math.max(1, 0.01 * wanted), `at ${level}`);
		}
	});
});

describe("amounts by the thousand are counted several at a time", () => {
	const used = (shape: number, most?: number) => {
		const days = daysOf(6, 90);
		const each = atLevels(days, shape, (day, factor) => poisson(day.mean * factor));
		return sumAtLevel(
			each,
			days.map(() => 997),
			most,
		);
	};
	test.each([0.5, 3, 40])("shape %d: within 1 in 100 of as many times the kits", (shape) => {
		const exact = negativeBinomial(shape, 6 * 90);
		const found = used(shape);
		for (const level of [0.8, 0.95, 0.99]) {
			const wanted = 997 * setAside(exact, level);
			expectWithin(setAside(found, level), wanted, 0.01 * wanted, `at ${level}`);
		}
	});

	test("what is beyond the most that is asked for is left out, all else as it was", () => {
		const [all, cut] = [used(3), used(3, 600_000)];
		expect(cut.first + cut.chance.length).toBeLessThanOrEqual(600_001);
		expect(cut.chance).toEqual(all.chance.slice(0, cut.chance.length));
		expect(setAside(cut, 0.5)).toBe(setAside(all, 0.5));
	});
});
