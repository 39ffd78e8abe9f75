import { describe, expect, test } from "vitest";
import { readyAt } from "../../../src/core/kits/readyAt.ts";
import type { AfterEachUse } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { usesFollowed } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

/** One person does 12 kits a day at most. */
const unit = (usesPerDay: number[], workMinutes = 120): AfterEachUse => ({
	kind: "after_each_use",
	usesPerDay,
	hourShares: flatDay,
	hands: { people: 1, workMinutes, aloneMinutes: 0 },
	readyLifeDays: null,
});

describe("uses of a day as it is followed", () => {
	test.each([
		["as they are, up to 19 of 20 that can be done", [11.3, 1], 11.3, 11.3],
		["beyond that, as the days are on average", [11.5, 1], 11.5, 6.25],
		["on average nearly too many", [11.5, 11.9], 11.9, 11.7],
		["on average too many", [20, 5], 20, 11.4],
		["a day with few, whatever the others", [20, 5], 5, 5],
	])("%s", (_, usesPerDay, perDay, wanted) => {
		expectWithin(usesFollowed(unit(usesPerDay), perDay), wanted, 1e-9, "uses");
	});

	test("work of moments counts as a minute", () => {
		expectWithin(usesFollowed(unit([1438, 1500], 0.5), 1438), 1368, 1e-9, "uses");
	});
});

test("births so many that kits wait more and more still have an answer, at every moment as over the day", () => {
	const forecast = { ...unit([2, 20]), forecast: { shape: 3, sure: [0, 20] } };
	for (const kits of [1, 4, 20]) {
		const unmet = unmetPer1000(kits, forecast);
		const moments = Array.from({ length: 48 }, (_, i) => i * 60);
		const none = moments.map((minute) => readyAt(kits, forecast, minute).nonePer1000);
		const of = (day: number) =>
			none.slice(24 * day, 24 * (day + 1)).reduce((sum, each) => sum + each / 24, 0);
		// Both days are mixed over the level together, by the uses of both.
		expect(unmet).toBeGreaterThan(Math.min(of(0), of(1)));
		expect(unmet).toBeLessThan(Math.max(of(0), of(1)));
	}
});
