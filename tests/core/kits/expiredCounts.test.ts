import { describe, expect, test } from "vitest";
import { chanceAtMost, setAside } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { expiredCounts, mostRenewals } from "../../../src/core/kits/expiredCounts.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

const counts = (mean: number, kitsInService: number, days = 1, readyLifeDays = 7) =>
	answerOf(expiredCounts, { mean, kitsInService, days, readyLifeDays });

describe("kits gone out of date are never more than there are", () => {
	test.each([
		[0.4, 1, 1],
		[0.43, 3, 1],
		[2, 2, 1],
		[40, 3, 7],
	])("mean %d of %d kits on %d days", (mean, kits, days) => {
		const capped = counts(mean, kits, days);
		const most = kits * mostRenewals(days, 7);
		expect(setAside(capped, 0.9999)).toBeLessThanOrEqual(most);
		expectWithin(chanceAtMost(capped, most), 1, 1e-12, "chance");
		for (let n = 0; n < most; n++)
			expectWithin(chanceAtMost(capped, n), chanceAtMost(poisson(mean), n), 1e-15, "chance");
	});

	test("one kit that is hardly used: one is set aside, where Poisson counts ask for two", () => {
		expect(setAside(poisson(0.4), 0.99)).toBe(2);
		expect(setAside(counts(0.4, 1), 0.99)).toBe(1);
	});

	test("without kits none", () => {
		expect(setAside(counts(0, 0), 0.99)).toBe(0);
		expect(setAside(counts(0.4, 0, 1, 2), 0.99)).toBe(0);
	});

	test("where they are far more, the Poisson counts themselves", () => {
		for (const [kits, life] of [
			[40, 7],
			[1, 2],
		] as const)
			expect(counts(0.4, kits, 1, life)).toEqual(poisson(0.4));
		const { first, chance } = counts(100, 3);
		expect([first, chance.length]).toEqual([3, 1]);
		expectWithin(chance[0], 1, 1e-12, "chance");
	});
});

test.each([
	[1, 7, 1],
	[4, 7, 1],
	[5, 7, 2],
	[31, 7, 8],
	[3, 0.25, Number.POSITIVE_INFINITY],
	[3, 3.5, Number.POSITIVE_INFINITY],
	[3, 4.9, 3],
	[90, 90, 2],
])("on %d days with a life of %d a kit can be renewed %d times", (days, life, times) => {
	expect(mostRenewals(days, life)).toBe(times);
});
