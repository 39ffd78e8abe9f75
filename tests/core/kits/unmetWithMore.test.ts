import { describe, expect, test } from "vitest";
import type { ReadyLife } from "../../../src/core/kits/renewalSteps.ts";
import type { Reprocessing } from "../../../src/core/kits/reprocessing.ts";
import { unmetPer1000, unmetWithMore } from "../../../src/core/kits/unmetPer1000.ts";
import { expectWithin } from "../../expectWithin.ts";
import { equalRounds, oneByOne } from "./reprocessed.ts";

const forDay: ReadyLife = { days: 0, renewal: "when_expired" };
const rounds = (life: ReadyLife | null, starts = [420, 840, 1260]): Reprocessing => ({
	...equalRounds([0.6, 0.6], starts, 110),
	life,
});

describe("kits that keep for their day only", () => {
	test.each([15, 40, 300])("with %d kits or more all are gone from midnight to 07:00", (kits) => {
		expectWithin(unmetWithMore(kits, rounds(forDay)), (1000 * 7) / 24, 1e-5, "of 1,000");
		// And until the kits of the first round are ready.
		const unmet = (1000 * (420 + 110)) / 1440;
		expectWithin(unmetPer1000(kits, rounds(forDay)), unmet, 1e-5, "of 1,000");
	});

	test("over levels of births it is never more than what goes unmet", () => {
		const forecast = { shape: 0.6, sure: [0, 0] };
		for (const kits of [15, 30, 100]) {
			const least = unmetWithMore(kits, { ...rounds(forDay), forecast });
			expect(least).toBeGreaterThan(0);
			expect(least).toBeLessThan(unmetPer1000(kits, { ...rounds(forDay), forecast }));
		}
	});
});

test.each<[string, number, Reprocessing]>([
	["few kits, of which each is followed", 14, rounds(forDay)],
	["kits that keep for the next day", 40, rounds({ days: 1, renewal: "when_expired" })],
	["kits renewed in time", 40, rounds({ days: 0, renewal: "in_time" })],
	["kits that keep for ever", 40, rounds(null)],
	["a round whose kits are ready after midnight", 40, rounds(forDay, [420, 1380])],
	["kits reprocessed one by one", 40, oneByOne([0.6])],
	["kits of which none is needed", 40, { ...equalRounds([0], [420], 110), life: forDay }],
	[
		"kits so busy that hardly one is there at midnight",
		20,
		{ ...equalRounds([150], [420, 1200], 110), life: forDay },
	],
])("nothing is known beforehand of %s", (_what, kits, reprocessing) => {
	expect(unmetWithMore(kits, reprocessing)).toBe(0);
});
