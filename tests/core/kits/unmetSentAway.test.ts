import { describe, expect, test } from "vitest";
import { readyAt } from "../../../src/core/kits/readyAt.ts";
import { type SentAway, UnmetSentAway, usesAway } from "../../../src/core/kits/unmetSentAway.ts";
import { flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

const plan: SentAway = {
	kind: "sent_away",
	starts: [420, 840, 1260],
	turnaroundMinutes: 110,
	usesPerDay: [0.6],
	hourShares: flatDay,
	readyLifeDays: null,
};
const unmet = (kits: number, change: Partial<SentAway> = {}) =>
	new UnmetSentAway({ ...plan, ...change }).per1000(kits);

describe("kits that rounds send away", () => {
	test("back before the next round begins, it is the closed form of equal rounds", () => {
		const table = [136.681, 11.5022, 0.734884, 0.038467, 0.00171635];
		table.forEach((per1000, i) => {
			expectWithin(unmet(i + 1), per1000, 1e-5 * per1000, "of 1,000");
		});
	});

	test("the more days are alike, the less it matters how many the plan has", () => {
		const many = unmet(4, { turnaroundMinutes: 1440, usesPerDay: [0.6, 0.6, 0.6, 0.6] });
		expectWithin(many, unmet(4, { turnaroundMinutes: 1440 }), 1e-9, "of 1,000");
	});

	test.each([
		["longer away", { turnaroundMinutes: 1440 }, { turnaroundMinutes: 2880 }],
		[
			"going out of date",
			{ turnaroundMinutes: 1440 },
			{ turnaroundMinutes: 1440, readyLifeDays: 7 },
		],
		["more uses", { turnaroundMinutes: 1440 }, { turnaroundMinutes: 1440, usesPerDay: [1] }],
	])("%s is never better", (_what, one, other) => {
		for (const kits of [1, 3, 6]) expect(unmet(kits, other)).toBeGreaterThan(unmet(kits, one));
	});

	test("a year's stretches are gone through together where they are alike: two days more bring what they bring to a short plan", () => {
		const away = { turnaroundMinutes: 2000, readyLifeDays: 7 };
		/** Needs of a plan of two days again and again that find none. */
		const needs = (days: number) =>
			unmet(4, { ...away, usesPerDay: Array.from({ length: days }, (_, d) => 0.4 + (d % 2)) }) *
			days *
			0.9;
		const ofTwoDays = needs(22) - needs(20);
		expectWithin(needs(402) - needs(400), ofTwoDays, 1e-6 * ofTwoDays, "of 1,000");
		expectWithin(needs(400) - needs(20), 190 * ofTwoDays, 1e-6 * ofTwoDays, "of 1,000");
	});

	test("at the very minute at which they are back, only those used since they went are away", () => {
		// From 07:00 to 08:50.
		expectWithin(usesAway(plan, 530), (0.6 * 110) / 1440, 1e-12, "kits");
	});

	test("no use, no unmet need", () => {
		expect(unmet(1, { usesPerDay: [0] })).toBe(0);
	});

	test("the risk of the hours, weighed by the uses, is the unmet share", () => {
		const away = { ...plan, turnaroundMinutes: 1440 };
		const at = (minute: number) => readyAt(4, away, minute).nonePer1000;
		const minutes = Array.from({ length: 1440 }, (_, minute) => minute + 0.5);
		const mean = minutes.reduce((sum, minute) => sum + at(minute), 0) / minutes.length;
		expectWithin(mean, unmet(4, { turnaroundMinutes: 1440 }), 1e-4, "of 1,000");
	});
});

/** Seeded: needs one by one, rounds that take all that waits, and kits that come back. */
function simulated(kits: number, turnaroundMinutes: number, days: number): number[] {
	let seed = 20270301;
	const random = () => {
		seed = (seed * 1664525 + 1013904223) % 2 ** 32;
		return (seed + 0.5) / 2 ** 32;
	};
	const batches: number[] = [];
	let ready = kits;
	let waiting = 0;
	const coming: { at: number; kits: number }[] = [];
	let [needs, none, batch] = [0, 0, 0];
	let next = -Math.log(random()) / (0.6 / 1440);
	for (let minute = 0; minute < days * 1440; minute++) {
		while (coming[0] && coming[0].at <= minute) ready += (coming.shift() as { kits: number }).kits;
		if (plan.starts.includes(minute % 1440) && waiting > 0) {
			coming.push({ at: minute + turnaroundMinutes, kits: waiting });
			waiting = 0;
		}
		while (next < minute + 1) {
			needs++;
			// A need that finds none still occupies a kit of the next round.
			if (ready <= 0) none++;
			ready--;
			waiting++;
			next += -Math.log(random()) / (0.6 / 1440);
		}
		if (++batch === days * 36) {
			batches.push((1000 * none) / needs);
			[needs, none, batch] = [0, 0, 0];
		}
	}
	return batches;
}

test("a simulation of forty batches agrees within four standard errors", () => {
	const batches = simulated(3, 1440, 20_000);
	const mean = batches.reduce((sum, each) => sum + each, 0) / batches.length;
	const variance =
		batches.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (batches.length - 1);
	const error = Math.sqrt(variance / batches.length);
	expectWithin(mean, unmet(3, { turnaroundMinutes: 1440 }), 4 * error, "of 1,000");
});
