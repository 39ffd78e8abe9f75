import { describe, expect, test } from "vitest";
import { kitsToRenew } from "../../../src/core/kits/kitsToRenew.ts";

/** Rounds at 07:00 and 19:00, ready two hours later, on so many days and one more. */
const rounds = (days: number) =>
	Array.from({ length: 2 * days + 1 }, (_, i) => ({
		start: Math.floor(i / 2) * 1440 + (i % 2 === 0 ? 420 : 1140),
		ready: Math.floor(i / 2) * 1440 + (i % 2 === 0 ? 540 : 1260),
	}));
const kit = (name: string, readyOn: number) => ({ kit: name, readyOn });

describe("when expired", () => {
	const life = { days: 7, renewal: "when_expired" } as const;

	test("a kit joins the first round after its last day", () => {
		// Ready two days before the plan: its last day is the fifth after, day 5.
		expect(kitsToRenew([kit("A", -2)], rounds(8), life).findIndex((k) => k.length > 0)).toBe(12);
	});

	test("a round at the very midnight that ends its last day is the first after it", () => {
		const atMidnight = [0, 1440, 2880].map((start) => ({ start, ready: start + 120 }));
		expect(kitsToRenew([kit("A", -7)], atMidnight, life)).toEqual([[], ["A"]]);
	});

	test("kits that end together join together", () => {
		expect(kitsToRenew([kit("B", -8), kit("A", -8)], rounds(1), life)).toEqual([["A", "B"], []]);
	});

	test("renewed, it is ready anew", () => {
		const each = kitsToRenew([kit("A", -8)], rounds(10), life);
		expect(each.map((kits, i) => (kits.length > 0 ? i : -1)).filter((i) => i >= 0)).toEqual([
			0, 16,
		]);
	});
});

describe("in time", () => {
	const life = { days: 7, renewal: "in_time" } as const;

	test("a kit joins the last round of its last day, because the next comes too late", () => {
		expect(kitsToRenew([kit("A", -7)], rounds(2), life)).toEqual([[], ["A"], [], []]);
	});

	test("where the last round's kits are ready after midnight, it joins the round before", () => {
		const late = rounds(2).map((round, i) =>
			i % 2 === 1 ? { ...round, ready: round.start + 360 } : round,
		);
		expect(kitsToRenew([kit("A", -7)], late, life)[0]).toEqual(["A"]);
	});

	test("where the next round's kits are ready by the very midnight that ends its last day, it waits for that round", () => {
		const exact = rounds(2).map((round, i) =>
			i % 2 === 1 ? { ...round, ready: round.start + 300 } : round,
		);
		expect(kitsToRenew([kit("A", -7)], exact, life)).toEqual([[], ["A"], [], []]);
	});

	test("of two that end together soon, one joins before, one a round at most", () => {
		const three = [kit("A", -6), kit("B", -6), kit("C", -6)];
		// Last day is day 1; two days before its midnight is the midnight that begins day 0.
		expect(kitsToRenew(three, rounds(2), life)).toEqual([["A"], ["B"], [], ["C"]]);
	});

	test("those that join because they end are no pair that is left", () => {
		const three = [kit("A", -7), kit("B", -7), kit("C", -7)];
		expect(kitsToRenew(three, rounds(2), life)).toEqual([["A"], ["B", "C"], [], []]);
	});

	test("two that end just two days after the next round's kits are ready wait", () => {
		const exact = rounds(1).map((round) => ({ ...round, ready: round.start + 300 }));
		expect(kitsToRenew([kit("A", -5), kit("B", -5)], exact, life)[0]).toEqual([]);
	});

	test("kits ready on one day go by their names, whichever round they came from", () => {
		const each = kitsToRenew([kit("B", -8), kit("A", -7)], rounds(8), life);
		expect(each.filter((kits) => kits.length > 0)).toEqual([["B"], ["A"], ["A"], ["B"]]);
	});

	test("two that end together later wait", () => {
		expect(kitsToRenew([kit("A", -4), kit("B", -4)], rounds(1), life)).toEqual([[], []]);
	});

	test("two that end on different days are no pair", () => {
		expect(kitsToRenew([kit("A", -6), kit("B", -5)], rounds(1), life)).toEqual([[], []]);
	});
});

test("no kit, no round", () => {
	const life = { days: 7, renewal: "in_time" } as const;
	expect(kitsToRenew([], rounds(1), life)).toEqual([[], []]);
	expect(kitsToRenew([kit("A", -9)], [], life)).toEqual([]);
});
