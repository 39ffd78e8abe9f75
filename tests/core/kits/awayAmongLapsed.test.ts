import { describe, expect, test } from "vitest";
import { awayAmongLapsed } from "../../../src/core/kits/awayAmongLapsed.ts";
import { awayThroughDay } from "../../../src/core/kits/awayThroughDay.ts";
import { DayClock, flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);
type Moment = ReturnType<typeof awayAmongLapsed>[0];
const meanOf = (queue: Float64Array) => queue.reduce((sum, chance, n) => sum + chance * n, 0);
const byMinute = (a: { minute: number }, b: { minute: number }) => a.minute - b.minute;

describe.each([
	["evenly", flatDay],
	["more by night", nightly],
])("where none goes out of date the queue is as it is without: %s", (_, shares) => {
	test.each([
		[1, 110, 0],
		[2, 45, 0],
		[1, 3, 0],
		[1, 110, 1380],
	])("%d people, %d minutes of work, %d alone", (people, workMinutes, aloneMinutes) => {
		const uses = new DayClock([6], shares);
		const hands = { people, workMinutes, aloneMinutes };
		const without = awayThroughDay(uses, hands);
		const among = awayAmongLapsed(uses, hands, Float64Array.of(1)).sort(byMinute);
		for (const { minute, queue, alone } of among) {
			expectWithin(alone, uses.between(minute - aloneMinutes, minute), 1e-9, "kits");
			const near = without.filter((each) => Math.abs(each.minute - minute) < 1e-6);
			// Where the alone minutes are no whole steps, moments lie between.
			for (const other of near) expectWithin(meanOf(queue), meanOf(other.queue), 1e-6, "kits");
		}
		expect(among.length).toBeGreaterThanOrEqual(without.length - 1);
		const dayMean = (moments: typeof among) =>
			moments.reduce((sum, { queue }) => sum + meanOf(queue), 0) / moments.length;
		expectWithin(dayMean(among), dayMean(without), 0.005, "kits");
	});
});

test("as long as others are worked on, those used only come", () => {
	// Three others every midnight: five hours and a half of work.
	const uses = new DayClock([2], flatDay);
	const hands = { people: 1, workMinutes: 110, aloneMinutes: 0 };
	const moments = awayAmongLapsed(uses, hands, Float64Array.of(0, 0, 0, 1));
	// A step is 110 ÷ 6 minutes; a service time later one of the others is done.
	for (let i = 6; i < 18; i++) {
		const [before, now] = [moments[i - 6], moments[i]] as [Moment, Moment];
		const came = uses.between(before.minute, now.minute);
		expectWithin(meanOf(now.queue), meanOf(before.queue) + came, 1e-9, "kits");
	}
	// By the evening nothing is left of it.
	const even = meanOf(awayThroughDay(uses, hands)[0]?.queue as Float64Array);
	expectWithin(meanOf(moments.at(-1)?.queue as Float64Array), even, 1e-3, "kits");
});

test("which number of them goes out of date is mixed", () => {
	const uses = new DayClock([0.001], flatDay);
	const hands = { people: 2, workMinutes: 100, aloneMinutes: 30 };
	const queueAt = (lapsed: Float64Array) =>
		awayAmongLapsed(uses, hands, lapsed)
			.sort(byMinute)
			.map(({ queue }) => meanOf(queue));
	const [none, five, either] = [
		Float64Array.of(1),
		Float64Array.of(0, 0, 0, 0, 0, 1),
		Float64Array.of(0.25, 0, 0, 0, 0, 0.75),
	].map(queueAt);
	either?.forEach((mean, n) => {
		const mixed = 0.25 * (none?.[n] as number) + 0.75 * (five?.[n] as number);
		expectWithin(mean, mixed, 1e-6, "kits");
	});
});

test("work of more than a day: others of all midnights since are waited for", () => {
	const uses = new DayClock([0.01], flatDay);
	const hands = { people: 3, workMinutes: 2000, aloneMinutes: 0 };
	const moments = awayAmongLapsed(uses, hands, Float64Array.of(0, 1));
	for (const { queue } of moments) {
		const sum = queue.reduce((all, chance) => all + chance, 0);
		expectWithin(sum, 1, 1e-9, "chance");
	}
	// The one of the midnight before is in work for 560 minutes of the day, besides what is used (Little).
	const mean = moments.reduce((all, { queue }) => all + meanOf(queue), 0) / moments.length;
	expectWithin(mean, (2000 - 1440) / 1440 + (0.01 * 2000) / 1440, 1e-3, "kits");
});

test("what the midnight before left waiting is waited for, whatever went out of date at this one", () => {
	// Two people and three kits each midnight, 800 minutes each: one is in work until 160 minutes after
	// the next. It holds up one of the next three from 800 to 960.
	const uses = new DayClock([1e-6], flatDay);
	const hands = { people: 2, workMinutes: 800, aloneMinutes: 0 };
	const moments = awayAmongLapsed(uses, hands, Float64Array.of(0, 0, 0, 1));
	const mean = moments.reduce((all, { queue }) => all + meanOf(queue), 0) / moments.length;
	expectWithin(mean, 320 / 1440, 1e-3, "kits");
});
