import fc from "fast-check";
import { test } from "vitest";
import type { LikeDay } from "../../src/core/kits/renewalSteps.ts";
import { renewalsOfDay } from "../../src/core/kits/renewalsOfDay.ts";
import { expectWithin } from "../expectWithin.ts";
import { always } from "./workbooks.ts";

/** Of each step numbers of uses are left out that come less than once in a thousand million times. */
const LEFT_OUT = 1e-6;

const days: fc.Arbitrary<LikeDay> = fc
	.record({
		starts: fc.uniqueArray(fc.integer({ min: 0, max: 1439 }), { minLength: 1, maxLength: 14 }),
		power: fc.double({ min: -2, max: 1.5, noNaN: true }),
		parts: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 15, maxLength: 15 }),
		plannedMinutes: fc.integer({ min: 1, max: 1500 }),
	})
	.map(({ starts, power, parts, plannedMinutes }) => {
		const own = parts.slice(0, starts.length + 1);
		const each = 10 ** power / own.reduce((sum, part) => sum + part, 0);
		const [usesAfterMidnight = 0, ...uses] = own.map((part) => part * each);
		return { starts: starts.sort((a, b) => a - b), uses, usesAfterMidnight, plannedMinutes };
	});

test("some number of kits is renewed, whatever was used", () => {
	fc.assert(
		fc.property(
			days,
			fc.integer({ min: 1, max: 18 }),
			fc.integer({ min: 1, max: 21 }),
			fc.constantFrom("when_expired" as const, "in_time" as const),
			(day, kits, life, renewal) => {
				for (const given of renewalsOfDay(kits, day, { days: life, renewal }).given)
					for (let used = 0; used <= kits; used++) {
						const all = given(used).chance.reduce((sum, chance) => sum + chance, 0);
						expectWithin(all, 1, LEFT_OUT, `chance after ${used} uses`);
					}
			},
		),
		always(120),
	);
});
