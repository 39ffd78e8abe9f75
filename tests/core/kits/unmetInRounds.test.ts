import { describe, expect, test } from "vitest";
import { expectedBeyond } from "../../../src/core/counts/poisson.ts";
import type { InRounds } from "../../../src/core/kits/roundsGoneThrough.ts";
import { UnmetInRounds } from "../../../src/core/kits/unmetInRounds.ts";
import { DayClock, flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

const fixed = (minutes: number) => ({ perRound: minutes, perKit: 0, loads: [] });
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

const unit = (change: Partial<InRounds> = {}): InRounds => ({
	kind: "in_rounds",
	starts: [420, 840, 1260],
	length: fixed(110),
	plannedMinutes: 110,
	usesPerDay: [0.6],
	hourShares: flatDay,
	life: null,
	...change,
});
const unmet = (kits: number, change: Partial<InRounds> = {}) =>
	new UnmetInRounds(unit(change)).per1000(kits);

describe("rounds of one length, kits that keep for ever: the closed form", () => {
	test.each([
		[1, 136.681, 5e-4],
		[2, 11.5022, 5e-5],
		[3, 0.734884, 5e-7],
		[4, 0.038467, 5e-7],
		[5, 0.00171635, 5e-9],
	])("0.6 a day, three rounds of 110 minutes, %d kits: %d of 1,000", (kits, result, tolerance) => {
		expectWithin(unmet(kits), result, tolerance, "per 1,000");
		const week = new Array(7).fill(0.6);
		expectWithin(unmet(kits, { usesPerDay: week }), result, tolerance, "per 1,000 in a week");
	});

	test.each([1, 2, 4, 7])("hours, days and gaps that differ, %d kits", (kits) => {
		const usesPerDay = [3, 1, 0, 5];
		const starts = [300, 900, 1320];
		const uses = new DayClock(usesPerDay, nightly);
		const all = [
			...usesPerDay.flatMap((_, day) => starts.map((s) => day * 1440 + s)),
			4 * 1440 + 300,
		];
		let sum = 0;
		for (let i = 0; i + 1 < all.length; i++) {
			const [start, next] = [all[i] as number, all[i + 1] as number];
			// The closed form counts until the next round's kits are back; each round has its own uses
			// in that time, so what it takes off at the end, it adds to the next at the beginning.
			const before = i === 0 ? -120 : (all[i - 1] as number);
			sum +=
				expectedBeyond(kits, uses.between(before, start + 200)) -
				expectedBeyond(kits, uses.between(before, start)) +
				expectedBeyond(kits, uses.between(start, next)) -
				expectedBeyond(kits, uses.between(start, start + 200));
		}
		const result = (1000 * sum) / uses.between(300, 4 * 1440 + 300);
		const change = { usesPerDay, starts, length: fixed(200), hourShares: nightly };
		expectWithin(unmet(kits, change), result, 1e-9 * result, "per 1,000");
	});
});

describe("each round lasts as long as its kits ask", () => {
	const byKits = { perRound: 30, perKit: 40, loads: [{ minutes: 20, kits: 2 }] };

	test("one kit: a round with any kit lasts as long as one", () => {
		expectWithin(unmet(1, { length: byKits }), unmet(1, { length: fixed(90) }), 1e-12, "per 1,000");
	});

	test("more kits: between rounds of one kit's length and rounds of all kits'", () => {
		const own = unmet(3, { length: byKits });
		expect(own).toBeGreaterThan(unmet(3, { length: fixed(90) }));
		expect(own).toBeLessThan(unmet(3, { length: fixed(30 + 120 + 40) }));
	});

	test("one round a day, two kits: written out", () => {
		// One round a day at noon, none used but in the hour before it; three kits' work is 5 hours.
		const shares = flatDay.map((_, hour) => (hour === 11 || hour === 14 ? 0.5 : 0));
		const length = { perRound: 0, perKit: 100, loads: [] };
		const change = { starts: [720], usesPerDay: [2], hourShares: shares, length };
		// With two kits: 1 use (mean) in each of the hours 11 and 14, the round begins with both.
		// Taken: those of hours 14 and 11, mean 2. With one kit taken it ends at 13:40, before 14;
		// with two or more at 15:20, after it: then all of hour 14 find none.
		const p = (k: number, m: number) => (Math.exp(-m) * m ** k) / (k === 2 ? 2 : 1);
		const two = 1 - p(0, 2) - p(1, 2);
		const beyond = expectedBeyond(2, 2);
		// After at most one: hours 14 and 11 with two kits. After two: hour 14 unmet, then they wait.
		const sum = (1 - two) * beyond + two * (1 + beyond - expectedBeyond(2, 1));
		expectWithin(unmet(2, change), (1000 * sum) / 2, 1e-9, "per 1,000");
	});
});

describe("a round takes at most what ends before the next", () => {
	const length = { perRound: 60, perKit: 180, loads: [] };

	test("with as many kits as fit, none is ever left over", () => {
		const change = { starts: [480, 960], length, usesPerDay: [1] };
		// Two kits take 420 minutes and fit into both gaps; the second gap is longer.
		expect(unmet(2, change)).toBeLessThan(unmet(1, change));
	});

	test("what is left over waits for the next round", () => {
		const change = { starts: [480, 960], usesPerDay: [3] };
		const free = unmet(8, { ...change, length: { ...length, perKit: 60 } });
		const tight = unmet(8, { ...change, length });
		expect(tight).toBeGreaterThan(3 * free);
		expect(tight).toBeLessThan(1000);
	});

	test("kits beyond what the rounds can do help still, but not against everything", () => {
		const change = { starts: [480, 960], usesPerDay: [9], length };
		const each = [2, 4, 8, 16, 32, 64].map((kits) => unmet(kits, change));
		for (let i = 1; i < each.length; i++)
			expect(each[i] as number).toBeLessThan(each[i - 1] as number);
		// Five kits a day at most, of nine needed.
		expect(each.at(-1)).toBeGreaterThan(400);
	});
});

test("without uses none is unmet", () => {
	expect(unmet(1, { usesPerDay: [0, 0] })).toBe(0);
	expect(unmet(2, { usesPerDay: [0], life: { days: 7, renewal: "in_time" } })).toBe(0);
});

describe("kits that go out of date", () => {
	// Of many kits, numbers of uses that come less than once in a thousand million steps are left out.
	test.each([
		["when_expired", 4, 6, 0],
		["in_time", 4, 6, 0],
		["when_expired", 12, 7.5, 1e-7],
		["when_expired", 14, 7.5, 1e-7],
	] as const)(
		"%s: none where uses are many, %i kits and %d uses a day",
		(renewal, kits, uses, left) => {
			const change = { usesPerDay: [uses] };
			const plain = unmet(kits, change);
			const life = { days: 7, renewal };
			expectWithin(unmet(kits, { ...change, life }), plain, 1e-6 * plain + left, "per 1,000");
		},
	);

	test("a unit with few births and few kits: out of date counts more than used", () => {
		const change = { usesPerDay: [0.1], starts: [420, 1140] };
		const plain = unmet(2, change);
		const late = unmet(2, { ...change, life: { days: 7, renewal: "when_expired" } });
		const inTime = unmet(2, { ...change, life: { days: 7, renewal: "in_time" } });
		expectWithin(plain, 0.62, 0.02, "per 1,000");
		expect(late).toBeGreaterThan(10 * plain);
		expectWithin(inTime, 0.7, 0.1, "per 1,000");
	});
});

// From one morning to the next there is time for 60 minutes and eleven kits of two hours each.
test.each([
	[10, true],
	[11, false],
	[15, false],
])(
	"%d uses on each of three days, one round a day that takes eleven kits: kept up with, %s",
	(uses, keepsUp) => {
		const change = {
			starts: [420],
			length: { perRound: 60, perKit: 120, loads: [] },
			usesPerDay: [uses, uses, uses],
		};
		expect(new UnmetInRounds(unit(change)).keepsUp).toBe(keepsUp);
	},
);
