import { describe, expect, test } from "vitest";
import { chanceAtLeast } from "../../../src/core/counts/poisson.ts";
import { awayThroughDay, plusPoisson } from "../../../src/core/kits/awayThroughDay.ts";
import { lapsedAtMidnight } from "../../../src/core/kits/lapsedAtMidnight.ts";
import { readyAt } from "../../../src/core/kits/readyAt.ts";
import type { AfterEachUse } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { usesFollowed } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { DayClock, flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";
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

const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

describe("hands without limit, a quarter of an hour after the other", () => {
	const hands = { people: Number.POSITIVE_INFINITY, workMinutes: 110, aloneMinutes: 20 };

	test.each([
		[1, [0.6, 3], null],
		[3, [0.6, 3, 3, 1], null],
		[2, [3, 3, 3, 0.6], null],
		[2, [0.2, 0.6], 7],
		[4, [0.6, 0.6, 0.2], 3],
	])("%d kits, %j uses a day, kits that keep for %j days", (kits, usesPerDay, readyLifeDays) => {
		const uses = new DayClock(usesPerDay, nightly);
		const mean = usesPerDay.reduce((sum, each) => sum + each, 0) / usesPerDay.length;
		const lapsed = readyLifeDays ? [...lapsedAtMidnight(kits, mean, readyLifeDays)] : [1];
		let sum = 0;
		for (let at = 0; at < 1440 * usesPerDay.length; at += 15) {
			const away = uses.between(at + 7.5 - 130, at + 7.5);
			// What went out of date at midnight is all back two hours and ten minutes later.
			const outOfDate = (at % 1440) + 7.5 < 130 ? lapsed : [1];
			const none = outOfDate.reduce((all, p, n) => all + p * chanceAtLeast(kits - n, away), 0);
			sum += none * uses.between(at, at + 15);
		}
		const found = unmetPer1000(kits, {
			...unit(usesPerDay),
			hourShares: nightly,
			hands,
			readyLifeDays,
		});
		const expected = (1000 * sum) / (mean * usesPerDay.length);
		expectWithin(found, expected, 1e-9 * expected, "per 1,000");
	});
});

describe("few hands, one moment of the day after the other", () => {
	const hands = { people: 1, workMinutes: 110, aloneMinutes: 200 };

	test.each([
		["by night more", nightly, 1, [0.6, 3]],
		["more kits", nightly, 4, [3, 0.6, 3]],
		["more than ever wait", nightly, 40, [3, 0]],
		["evenly", flatDay, 2, [0.6, 3, 3]],
	])("%s", (_what, hourShares, kits, usesPerDay) => {
		let [sum, all] = [0, 0];
		for (const perDay of usesPerDay.filter((each) => each > 0)) {
			const uses = new DayClock([perDay], hourShares);
			const moments = awayThroughDay(uses, hands);
			const apart = 720 / moments.length;
			for (const { minute, queue, alone } of moments) {
				const away = plusPoisson(queue, alone);
				const none = away.subarray(kits).reduce((chance, p) => chance + p, 0);
				const come = uses.between(minute - apart, minute + apart);
				sum += none * come;
				all += come;
			}
		}
		const expected = (1000 * sum) / all;
		const found = unmetPer1000(kits, { ...unit(usesPerDay), hourShares, hands });
		expectWithin(found, expected, 1e-9 * expected + 1e-15, "per 1,000");
	});
});
