import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { InRounds } from "../../src/core/kits/roundsGoneThrough.ts";
import { UnmetAfterEachUse } from "../../src/core/kits/unmetAfterEachUse.ts";
import { UnmetInRounds } from "../../src/core/kits/unmetInRounds.ts";
import type { HourShares } from "../../src/core/rounds/dayClock.ts";
import { minutesOf } from "../../src/core/rounds/roundLength.ts";

const seed = 14;
const hours = fc
	.array(fc.integer({ min: 1, max: 5 }), { minLength: 24, maxLength: 24 })
	.map((weights): HourShares => {
		const sum = weights.reduce((all, weight) => all + weight, 0);
		return weights.map((weight) => weight / sum);
	});
const starts = fc
	.uniqueArray(fc.integer({ min: 0, max: 5 }), { minLength: 1, maxLength: 3 })
	.map((slots) => slots.sort((a, b) => a - b).map((slot) => 60 + slot * 240));
const usesPerDay = fc.array(fc.double({ min: 0.05, max: 3, noNaN: true }), {
	minLength: 1,
	maxLength: 3,
});
/** Short enough for several kits in the shortest gap of four hours. */
const length = fc.record({
	perRound: fc.integer({ min: 10, max: 60 }),
	perKit: fc.integer({ min: 5, max: 20 }),
	loads: fc.array(
		fc.record({
			minutes: fc.integer({ min: 0, max: 15 }),
			kits: fc.integer({ min: 2, max: 6 }),
		}),
		{ maxLength: 2 },
	),
});
const inRounds = fc.record({ starts, length, usesPerDay, hourShares: hours }).map(
	(unit): InRounds => ({
		kind: "in_rounds",
		...unit,
		plannedMinutes: minutesOf(unit.length, 2),
		life: null,
	}),
);
const kitsOf = fc.integer({ min: 1, max: 6 });
const unmet = (unit: InRounds, kits: number) => new UnmetInRounds(unit).per1000(kits);
/** Rounding alone. */
const noMore = (after: number, before: number) =>
	expect(after).toBeLessThanOrEqual(before * (1 + 1e-9) + 1e-12);

describe("in rounds", () => {
	test("more kits, never more unmet", () => {
		fc.assert(
			fc.property(inRounds, kitsOf, (unit, kits) => {
				noMore(unmet(unit, kits + 1), unmet(unit, kits));
			}),
			{ seed },
		);
	});

	test("more kits, never more unmet, where kits go out of date", () => {
		const renewal = fc.constantFrom("in_time" as const, "when_expired" as const);
		fc.assert(
			fc.property(inRounds, fc.integer({ min: 1, max: 3 }), renewal, (unit, kits, how) => {
				const life = { days: 7, renewal: how };
				noMore(unmet({ ...unit, life }, kits + 1), unmet({ ...unit, life }, kits));
			}),
			{ seed, numRuns: 40 },
		);
	});

	test("more hands, so shorter rounds, never more unmet", () => {
		fc.assert(
			fc.property(inRounds, kitsOf, (unit, kits) => {
				const faster = { ...unit, length: { ...unit.length, perKit: unit.length.perKit / 2 } };
				noMore(unmet(faster, kits), unmet(unit, kits));
			}),
			{ seed },
		);
	});

	test("one round more, never more unmet", () => {
		fc.assert(
			fc.property(inRounds, kitsOf, fc.integer({ min: 0, max: 5 }), (unit, kits, slot) => {
				const start = 60 + slot * 240;
				fc.pre(!unit.starts.includes(start));
				const more = [...unit.starts, start].sort((a, b) => a - b);
				// What is counted begins with the first round of the plan: a day like all others, so that it is all of it.
				const day = { ...unit, usesPerDay: unit.usesPerDay.slice(0, 1) };
				noMore(unmet({ ...day, starts: more }, kits), unmet(day, kits));
			}),
			{ seed },
		);
	});

	test("kits that go out of date never make it better", () => {
		fc.assert(
			fc.property(inRounds, fc.integer({ min: 1, max: 4 }), (unit, kits) => {
				const life = { days: 7, renewal: "when_expired" as const };
				noMore(unmet(unit, kits), unmet({ ...unit, life }, kits));
			}),
			{ seed, numRuns: 40 },
		);
	});
});

describe("after each use", () => {
	const queue = fc.record({
		perDay: fc.double({ min: 0.2, max: 7, noNaN: true }),
		shares: hours,
		people: fc.integer({ min: 1, max: 3 }),
		kits: kitsOf,
	});
	const unmetWith = (perDay: number, shares: HourShares, people: number, kits: number) =>
		new UnmetAfterEachUse({
			kind: "after_each_use",
			usesPerDay: [perDay],
			hourShares: shares,
			hands: { people, workMinutes: 110, aloneMinutes: 0 },
			readyLifeDays: null,
		}).per1000(kits);

	test("more kits, never more unmet; nor with more people", () => {
		fc.assert(
			fc.property(queue, ({ perDay, shares, people, kits }) => {
				const now = unmetWith(perDay, shares, people, kits);
				noMore(unmetWith(perDay, shares, people, kits + 1), now);
				noMore(unmetWith(perDay, shares, people + 1, kits), now);
			}),
			{ seed, numRuns: 40 },
		);
	});
});
