import { describe, expect, test } from "vitest";
import { lapsedAtMidnight, stillInWork } from "../../../src/core/kits/lapsedAtMidnight.ts";
import {
	type KindInQueue,
	lapsedOfAll,
	lapsedOfOthers,
	ofAllKinds,
	shareOf,
} from "../../../src/core/kits/otherKinds.ts";
import { readyAt } from "../../../src/core/kits/readyAt.ts";
import { roomPerDay } from "../../../src/core/kits/roomPerDay.ts";
import type { AfterEachUse } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { usesFollowed } from "../../../src/core/kits/unmetAfterEachUse.ts";
import { unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

const hands = { people: 1, workMinutes: 110, aloneMinutes: 0 };
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);
const one: AfterEachUse = {
	kind: "after_each_use",
	usesPerDay: [3.75],
	hourShares: flatDay,
	hands,
	readyLifeDays: null,
};
const own = { kits: 4, usesPerDay: 3.75, days: Number.POSITIVE_INFINITY };
const half = { share: 0.5, own, kinds: [] };

describe("one kind alone", () => {
	test.each([
		["evenly", one],
		["more by night", { ...one, hourShares: nightly }],
		["days that differ", { ...one, usesPerDay: [1, 12, 5] }],
		["a forecast", { ...one, forecast: { shape: 8, sure: [0] } }],
		["hands without limit", { ...one, hands: { ...hands, people: Infinity } }],
	])("as if there were no kinds, to the last digit: %s", (_, alone) => {
		const among = { ...alone, others: { share: 1, own, kinds: [] } };
		for (const kits of [1, 3, 6]) {
			expect(unmetPer1000(kits, among)).toBe(unmetPer1000(kits, alone));
			expect(readyAt(kits, among, 500)).toEqual(readyAt(kits, alone, 500));
		}
	});

	test("has all uses and waits for no others", () => {
		expect(shareOf(one)).toBe(1);
		expect(ofAllKinds(0.1 + 0.2, one)).toBe(0.1 + 0.2);
		expect([lapsedOfOthers(one), lapsedOfAll(one)]).toEqual([undefined, undefined]);
	});
});

test("kinds find the same number of uses of all: their queue is found once", () => {
	const all = 0.7 + 0.1 + 0.4;
	const found = [0.7, 0.1, 0.4].map((uses) =>
		ofAllKinds(uses, { hands, others: { share: uses / all, own, kinds: [] } }),
	);
	expect(new Set(found)).toEqual(new Set([1.2]));
	expect(ofAllKinds(0, { hands, others: { share: 0, own, kinds: [] } })).toBe(0);
});

test("room and what is followed are those of all kinds", () => {
	const among = { ...one, usesPerDay: [6.5, 1], others: half };
	// 13 a day of 13.09 that can be done are more than 19 of 20: as the days are on average, 7.5.
	expectWithin(usesFollowed(among, 6.5), 7.5, 1e-9, "uses");
	expectWithin(usesFollowed(among, 6), 12, 1e-9, "uses");
	expectWithin(roomPerDay(among), (0.5 * 1440) / 110, 1e-12, "kits");
});

describe("kits of other kinds that go out of date", () => {
	const kinds = [
		{ kits: 2, usesPerDay: 0.3, days: 7 },
		{ kits: 0, usesPerDay: 1, days: 7 },
		{ kits: 3, usesPerDay: 0.1, days: 5 },
	];

	const others = { share: 0.5, own, kinds };

	test("together, as many as both; of a kind without kits none", () => {
		const lapsed = lapsedOfOthers({ hands, others });
		const [a, b] = [lapsedAtMidnight(2, 0.3, 7), lapsedAtMidnight(3, 0.1, 5)];
		for (let n = 0; n <= 5; n++) {
			let expected = 0;
			for (let i = 0; i <= n; i++) expected += (a[i] ?? 0) * (b[n - i] ?? 0);
			expectWithin(lapsed?.[n] ?? 0, expected, 1e-9, "chance");
		}
	});

	test("each kind waits for the same list, its own kits in it", () => {
		const [first, second] = [kinds[0], kinds[2]] as [KindInQueue, KindInQueue];
		const one = lapsedOfAll({ hands, others: { share: 0.7, own: first, kinds: [second] } });
		const two = lapsedOfAll({ hands, others: { share: 0.3, own: second, kinds: [first] } });
		expect(one).toBe(two);
		expect(one).toHaveLength(6);
		expect(lapsedOfOthers({ hands, others: { ...others, kinds: [second] } })).toHaveLength(4);
	});

	test("of kinds that keep for ever none, for sure", () => {
		const keeps = {
			...others,
			kinds: [{ kits: 3, usesPerDay: 1, days: Number.POSITIVE_INFINITY }],
		};
		expect([...(lapsedOfOthers({ hands, others: keeps }) ?? [])]).toEqual([1]);
	});

	test("of many a few numbers are followed: the mean stays, and as many are possible", () => {
		const many = [12, 20, 9].map((kits) => ({ kits, usesPerDay: 0.5, days: 1 }));
		const lapsed = lapsedOfOthers({ hands, others: { share: 0.5, own, kinds: many } });
		const meanOf = (list: Float64Array) => list.reduce((sum, p, n) => sum + p * n, 0);
		const mean = many.reduce((sum, { kits }) => sum + meanOf(lapsedAtMidnight(kits, 0.5, 1)), 0);
		expectWithin(meanOf(lapsed as Float64Array), mean, 1e-6, "kits");
		expect(lapsed?.filter((chance) => chance > 0).length).toBeLessThanOrEqual(17);
	});

	test("nobody waits for them where hands are without limit, or hardly any ever does", () => {
		const always = { ...hands, people: Number.POSITIVE_INFINITY };
		expect(lapsedOfAll({ hands: always, others })).toBe(undefined);
		const rare = { kits: 2, usesPerDay: 20, days: 90 };
		expect(lapsedOfAll({ hands, others: { share: 0.5, own: rare, kinds: [rare] } })).toBe(
			undefined,
		);
	});

	/** Of 2 own and 2 others in turn, one own after two, between 1 and 2 after one. */
	test.each([
		[0, [0, 0, 1]],
		[1, [0, 0.5, 0.5]],
		[2, [0, 1, 0]],
		[3, [0.5, 0.5, 0]],
		[4, [1, 0, 0]],
		[9, [1, 0, 0]],
		[Number.POSITIVE_INFINITY, [1, 0, 0]],
	])("all are done in turn: %d done", (done, left) => {
		const [own, others] = [Float64Array.of(0, 0, 1), Float64Array.of(0, 0, 1)];
		expect([...stillInWork(own, done, others)]).toEqual(left);
	});

	test("with none of others those done are own", () => {
		const own = Float64Array.of(0.5, 0.2, 0.2, 0.1);
		const left = stillInWork(own, 2);
		[0.9, 0.1, 0, 0].forEach((chance, n) => {
			expectWithin(left[n], chance, 1e-12, "chance");
		});
	});
});

test("what is unmet over the day is the risk at its moments", () => {
	const kinds = [{ kits: 6, usesPerDay: 2.5, days: 2 }];
	const others = { share: 0.6, own: { ...own, days: 4 }, kinds };
	const among: AfterEachUse = { ...one, readyLifeDays: 4, others };
	const moments = Array.from({ length: 288 }, (_, i) => 5 * i + 2.5);
	for (const kits of [3, 5]) {
		const sum = moments.reduce((all, at) => all + readyAt(kits, among, at).nonePer1000, 0);
		const mean = sum / moments.length;
		expectWithin(mean, unmetPer1000(kits, among), 0.02 * mean, "per 1,000");
	}
});
