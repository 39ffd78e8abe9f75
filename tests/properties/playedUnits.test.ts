import fc from "fast-check";
import { test } from "vitest";
import { UnmetInRounds } from "../../src/core/kits/unmetInRounds.ts";
import { flatDay } from "../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../expectWithin.ts";
import { type PlayedUnit, played } from "../reference/simulatedUnit.ts";
import { always } from "./workbooks.ts";

const DAYS = 5000;
/** So many needs more or fewer are chance, where hardly any goes unmet. */
const FEW_NEEDS = 4;

/** Rounds that last as planned, all day long; more and fewer kits than are followed one by one. */
const units: fc.Arbitrary<PlayedUnit> = fc
	.record({
		kits: fc.integer({ min: 1, max: 40 }),
		// Uses of a kit, from one in a hundred days to two a day.
		power: fc.double({ min: -2, max: 0.3, noNaN: true }),
		starts: fc.uniqueArray(fc.integer({ min: 0, max: 23 }), { minLength: 1, maxLength: 5 }),
		minutes: fc.integer({ min: 10, max: 60 }),
		lifeDays: fc.integer({ min: 1, max: 8 }),
		renewal: fc.constantFrom("when_expired" as const, "in_time" as const),
	})
	.map(({ kits, power, starts, minutes, ...life }) => ({
		...life,
		kits,
		usesPerDay: Math.min(30, kits * 10 ** power),
		shares: flatDay,
		starts: starts.sort((a, b) => a - b).map((hour) => hour * 60),
		minutes: () => minutes,
		plannedMinutes: minutes,
	}));

test("needs that find no kit ready are told as they are where a unit is played, whatever the unit", () => {
	fc.assert(
		fc.property(units, (unit) => {
			const { kits, usesPerDay, starts, plannedMinutes, lifeDays, renewal } = unit;
			const { mean, standardError } = played(unit, DAYS, kits).unmetPer1000;
			const told = new UnmetInRounds({
				kind: "in_rounds",
				starts,
				length: { perRound: plannedMinutes, perKit: 0, loads: [] },
				plannedMinutes,
				usesPerDay: [usesPerDay],
				hourShares: flatDay,
				life: { days: lifeDays, renewal },
			}).per1000(kits);
			const chance = 3 * standardError + (1000 * FEW_NEEDS) / (usesPerDay * DAYS);
			expectWithin(told, mean, Math.max(0.25 * mean, 0.1) + chance, "of 1,000 uses");
		}),
		always(80),
	);
});
