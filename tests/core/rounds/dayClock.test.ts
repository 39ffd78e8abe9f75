import { describe, expect, test } from "vitest";
import { unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { DayClock, flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";
import { equalRounds } from "../kits/reprocessed.ts";

describe("a flat day", () => {
	const clock = new DayClock([2.4, 4.8, 0], flatDay);
	test.each([
		["an hour of the first day", 60, 120, 0.1],
		["a whole first day", 0, 1440, 2.4],
		["over the first midnight", 1380, 1500, 0.3],
		["half an hour", 0, 30, 0.05],
		["all three days", 0, 4320, 7.2],
		["the day before is like the first", -1440, 0, 2.4],
		["two days before", -2880, -1440, 2.4],
		["the day after is like the last", 4320, 5760, 0],
		["no time", 700, 700, 0],
		["from what rounding leaves before midnight", -1.4210854715202004e-14, 120, 0.2],
	])("%s", (_what, from, to, uses) => {
		expectWithin(clock.between(from, to), uses, 1e-12, "uses");
	});
});

describe("a day with hours of its own", () => {
	const shares = Array.from({ length: 24 }, (_, hour) =>
		hour === 3 ? 0.75 : hour === 23 ? 0.25 : 0,
	);
	const clock = new DayClock([4, 8], shares);
	test.each([
		["before the first busy hour", 0, 180, 0],
		["half of it", 180, 210, 1.5],
		["all of it", 180, 240, 3],
		["from the evening into the next day's night", 1380, 1440 + 240, 7],
		["between them", 240, 1380, 0],
	])("%s", (_what, from, to, uses) => {
		expectWithin(clock.between(from, to), uses, 1e-12, "uses");
	});
});

test.each([
	["as many on each day, at any hour", [2, 2], flatDay, true],
	["more on a day", [2, 3], flatDay, false],
	["more at an hour", [2, 2], [...flatDay.slice(1), 0], false],
	["more on a day and at an hour", [2, 3], [...flatDay.slice(1), 0], false],
])("uses are even: %s", (_what, perDay, shares, isEven) => {
	expect(new DayClock(perDay, shares).isEven).toBe(isEven);
});

describe("nights without births", () => {
	const shares = Array.from({ length: 24 }, (_, hour) => (hour < 2 || hour > 21 ? 0 : 1 / 20));

	test("rounding leaves no hour with less than no births", () => {
		for (let hour = 0; hour < 47; hour++) {
			const uses = new DayClock([0.6, 0.6], shares).between(hour * 60, (hour + 1) * 60);
			expect(uses).toBeGreaterThanOrEqual(0);
		}
		expect(new DayClock([0.6, 0.6], shares).between(23 * 60, 25 * 60)).toBe(0);
	});

	test("a round that ends in them finds its unmet uses", () => {
		const unmet = unmetPer1000(2, equalRounds([0.6], [1380], 110, shares));
		expect(unmet).toBeGreaterThan(0);
		expect(unmet).toBeLessThan(1000);
	});
});
