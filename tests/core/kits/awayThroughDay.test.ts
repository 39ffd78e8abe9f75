import { describe, expect, test } from "vitest";
import { awayThroughDay, plusPoisson } from "../../../src/core/kits/awayThroughDay.ts";
import { kitsInQueue, oneServiceLater } from "../../../src/core/kits/kitsInQueue.ts";
import { DayClock, flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

const DAY = 1440;
const WORK = 110;
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);
const hands = { people: 1, workMinutes: WORK, aloneMinutes: 0 };
const meanOf = (queue: Float64Array) => queue.reduce((sum, chance, n) => sum + chance * n, 0);

/** A step is 110 ÷ 6 minutes; the first after the days that are passed over. */
describe.each([
	["evenly", flatDay],
	["more by night", nightly],
])("where they come %s", (_what, shares) => {
	test.each([
		[1, 0.6, 2],
		[1, 6, 2],
		[1, 9, 4],
		[2, 9, 2],
		[2, 20, 4],
		[1, 12, 8],
	])("%d people and %d uses a day: followed for so many days first: %d", (people, uses, days) => {
		const moments = awayThroughDay(new DayClock([uses], shares), { ...hands, people });
		const step = WORK / 6;
		const first = Math.ceil((days * DAY) / step - 1e-9) * step - days * DAY;
		moments.forEach(({ minute }, i) => {
			expectWithin(minute, first + i * step, 1e-6, "min");
		});
		expect(moments.at(-1)?.minute).toBeLessThan(DAY);
		expect((moments.at(-1)?.minute as number) + step).toBeGreaterThanOrEqual(DAY - 1e-6);
	});
});

test("where they come evenly every moment is the queue of an even day, and as many are alone", () => {
	const moments = awayThroughDay(new DayClock([6], flatDay), { ...hands, aloneMinutes: 45 });
	const queue = kitsInQueue(1, (6 * WORK) / DAY);
	for (const moment of moments) {
		expect([...moment.queue]).toEqual([...queue]);
		expect(moment.alone).toBe(moments[0]?.alone);
	}
	expectWithin(moments[0]?.alone, (6 * 45) / DAY, 1e-12, "kits");
});

test("where they do not, a moment follows from that one service time before, of those that came until they are alone no more", () => {
	const uses = new DayClock([6], nightly);
	const moments = awayThroughDay(uses, { ...hands, aloneMinutes: 45 });
	for (let i = 6; i < moments.length; i++) {
		const [before, now] = [moments[i - 6], moments[i]] as [
			(typeof moments)[0],
			(typeof moments)[0],
		];
		const came = uses.between(now.minute - 45 - WORK, now.minute - 45);
		const later = oneServiceLater(before.queue, 1, came);
		expectWithin(meanOf(now.queue), meanOf(later), 1e-9, "kits");
		expectWithin(now.alone, uses.between(now.minute - 45, now.minute), 1e-12, "kits");
	}
	const at = (hour: number) =>
		meanOf(moments.find(({ minute }) => minute >= hour * 60)?.queue as Float64Array);
	expect(at(7)).toBeGreaterThan(1.5 * at(20));
});

test.each([
	["work of moments counts as a minute, and every fifth is looked at", 1e-4, 5],
	["a minute is a step, and every fifth is looked at", 1, 5],
	["of steps of two minutes every second is", 2, 4],
	["three minutes are one step", 3, 3],
	["twenty minutes are one step", 20, 20],
	["a little more are two", 21, 10.5],
])("%s", (_what, workMinutes, step) => {
	const moments = awayThroughDay(new DayClock([3], flatDay), { ...hands, workMinutes });
	const [first, second] = moments.map(({ minute }) => minute);
	expectWithin((second as number) - (first as number), step, 1e-6, "min");
});

test.each([
	["none", 0, [0.25, 0.75]],
	["a few", 0.5, [0.25 * Math.exp(-0.5), (0.75 + 0.125) * Math.exp(-0.5)]],
])("%s are added", (_what, mean, expected) => {
	const sum = plusPoisson(Float64Array.of(0.25, 0.75), mean);
	expected.forEach((chance, n) => {
		expectWithin(sum[n], chance, 1e-12, "chance");
	});
	expectWithin(meanOf(sum), 0.75 + mean, 1e-12, "kits");
	const many = plusPoisson(Float64Array.of(1), 300);
	expectWithin(meanOf(many), 300, 1e-9, "kits");
});

test("a short queue that stays through an hour is that of a day with so many uses, and begins anew with the next hour", () => {
	const moments = awayThroughDay(new DayClock([200], nightly), { ...hands, workMinutes: 1 });
	const perHour = [(200 * 2) / 31, 200 / 31];
	moments.forEach(({ minute, queue }) => {
		// Half an hour after the uses have changed nothing is left of what was before.
		if (minute % 60 < 30 && [0, 7].includes(Math.floor(minute / 60))) return;
		const even = kitsInQueue(1, (perHour[minute < 420 ? 0 : 1] as number) / 60);
		even.forEach((chance, n) => {
			expectWithin(queue[n] ?? 0, chance, 1e-10, "chance");
		});
	});
});

test.each([
	["hardly any kit waits", 1, 0.6, 1e-12],
	["an evening takes until morning", 1, 4, 1e-7],
	["two people", 2, 9, 1e-10],
])("the day goes on as the one before ended: %s", (_what, people, perDay, within) => {
	const evening: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 20 ? 1 : 6) / 44);
	const uses = new DayClock([perDay], evening);
	const moments = awayThroughDay(uses, { people, workMinutes: 120, aloneMinutes: 45 });
	for (let i = 0; i < 6; i++) {
		const before = moments.at(i - 6) as (typeof moments)[0];
		const now = moments[i] as (typeof moments)[0];
		const came = uses.between(now.minute - 45 - 120, now.minute - 45);
		const later = oneServiceLater(before.queue, people, came);
		expectWithin(now.queue.length, later.length, 3, "kits");
		later.forEach((chance, n) => {
			expectWithin(now.queue[n] ?? 0, chance, within, "chance");
		});
	}
});

test("hours after the last came none is left, however they might have waited on an even day", () => {
	// All in the morning: of two at noon the second is done half an hour later.
	const morning: HourShares = Array.from({ length: 24 }, (_, hour) =>
		hour >= 8 && hour < 12 ? 0.25 : 0,
	);
	const uses = new DayClock([3], morning);
	const quarter = { people: 1, workMinutes: 15, aloneMinutes: 0 };
	const [midnight] = awayThroughDay(uses, quarter);
	expectWithin(midnight?.queue[0] as number, 1, 1e-12, "chance");
});
