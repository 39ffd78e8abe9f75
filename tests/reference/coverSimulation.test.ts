import { describe, expect, test } from "vitest";
import { renewalsOfDay } from "../../src/core/kits/renewalsOfDay.ts";
import { UnmetAfterEachUse } from "../../src/core/kits/unmetAfterEachUse.ts";
import { UnmetInRounds } from "../../src/core/kits/unmetInRounds.ts";
import { DayClock, flatDay, type HourShares } from "../../src/core/rounds/dayClock.ts";
import { minutesOf, type RoundLength } from "../../src/core/rounds/roundLength.ts";
import { expectWithin } from "../expectWithin.ts";
import { playedAfterEachUse } from "./playedAfterEachUse.ts";
import { played } from "./simulatedUnit.ts";

/** Chance alone goes further than this about once in 16,000 times. */
const STANDARD_ERRORS = 4;
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);
const fixed = (minutes: number): RoundLength => ({
	perRound: minutes,
	perKit: 0,
	loads: [],
});
const byKits: RoundLength = { perRound: 60, perKit: 30, loads: [{ minutes: 20, kits: 3 }] };
const slow: RoundLength = { perRound: 60, perKit: 90, loads: [{ minutes: 20, kits: 2 }] };

describe("in rounds, kits that keep: exact but for chance", () => {
	test.each([
		{ kits: 3, perDay: 0.6, starts: [420, 840, 1260], length: byKits, shares: nightly },
		{ kits: 6, perDay: 3, starts: [480, 1200], length: byKits, shares: nightly },
		{ kits: 10, perDay: 5, starts: [420, 840, 1260], length: byKits, shares: flatDay },
		{ kits: 6, perDay: 2.5, starts: [360, 1260], length: slow, shares: nightly },
		// Rounds that cannot always take all: at most three kits in the shorter gap.
		{ kits: 8, perDay: 3, starts: [480, 900], length: slow, shares: flatDay },
	])(
		"$kits kits, $perDay uses a day, rounds $starts",
		({ kits, perDay, starts, length, shares }) => {
			const unit = {
				kits,
				usesPerDay: perDay,
				shares,
				starts,
				minutes: (n: number) => minutesOf(length, n),
				plannedMinutes: minutesOf(length, 2),
				lifeDays: Number.POSITIVE_INFINITY,
				renewal: "in_time" as const,
			};
			const { mean, standardError } = played(unit, 300_000, kits).unmetPer1000;
			const expected = new UnmetInRounds({
				kind: "in_rounds",
				starts,
				length,
				plannedMinutes: unit.plannedMinutes,
				usesPerDay: [perDay, perDay],
				hourShares: shares,
				life: null,
			}).per1000(kits);
			expect(standardError).toBeLessThan(0.1 * mean);
			expectWithin(expected, mean, STANDARD_ERRORS * standardError, "unmet per 1,000 uses");
		},
	);
});

describe.each(["when_expired", "in_time"] as const)(
	"kits that go out of date, renewed %s",
	(renewal) => {
		test.each([
			{ kits: 2, perDay: 0.1, starts: [420, 1140], length: fixed(110), days: 7 },
			{ kits: 3, perDay: 0.1, starts: [420, 1140], length: fixed(110), days: 7 },
			{ kits: 4, perDay: 0.6, starts: [420, 840, 1260], length: byKits, days: 7 },
			{ kits: 3, perDay: 0.6, starts: [420, 840, 1260], length: byKits, days: 7 },
			{ kits: 6, perDay: 0.6, starts: [420, 840, 1260], length: byKits, days: 7 },
			{ kits: 9, perDay: 0.6, starts: [420, 840, 1260], length: fixed(240), days: 7 },
			{ kits: 8, perDay: 1, starts: [480, 1200], length: fixed(200), days: 7 },
			{ kits: 12, perDay: 2.5, starts: [420, 840, 1260], length: fixed(240), days: 7 },
			{ kits: 3, perDay: 1, starts: [480, 1200], length: fixed(200), days: 3 },
			{ kits: 4, perDay: 0.3, starts: [480], length: fixed(300), days: 14 },
			// Hardly used, they come round together, over more than a fortnight.
			{ kits: 5, perDay: 0.01, starts: [480, 1200], length: fixed(110), days: 18 },
			{ kits: 5, perDay: 0.6, starts: [600], length: fixed(300), days: 1 },
			// Of many that keep for a day most end together.
			{ kits: 20, perDay: 0.8, starts: [585], length: fixed(130), days: 1 },
			// Ready after midnight: the day counts from then.
			{ kits: 4, perDay: 0.4, starts: [600, 1320], length: fixed(180), days: 7 },
		])(
			"$kits kits, $perDay uses a day, $days days, rounds $starts",
			({ kits, perDay, starts, length, days }) => {
				const plannedMinutes = minutesOf(length, 2);
				const unit = {
					kits,
					usesPerDay: perDay,
					shares: flatDay,
					starts,
					minutes: (n: number) => minutesOf(length, n),
					plannedMinutes,
					lifeDays: days,
					renewal,
				};
				const { unmetPer1000, renewedPerDay } = played(unit, 300_000, 10 * kits + days);
				const uses = new DayClock([perDay], flatDay);
				const { perDay: renewed } = renewalsOfDay(
					kits,
					{
						starts,
						uses: starts.map((start, i) => uses.between(start, starts[i + 1] ?? 1440)),
						usesAfterMidnight: uses.between(0, starts[0] as number),
						plannedMinutes,
					},
					{ days, renewal },
				);
				const chance = 3 * renewedPerDay.standardError;
				expectWithin(renewed, renewedPerDay.mean, 0.05 * renewedPerDay.mean + chance, "kits a day");
				const cover = new UnmetInRounds({
					kind: "in_rounds",
					starts,
					length,
					plannedMinutes,
					usesPerDay: [perDay],
					hourShares: flatDay,
					life: { days, renewal },
				});
				const { mean, standardError } = unmetPer1000;
				const within = Math.max(0.25 * mean, 0.1) + 3 * standardError;
				expectWithin(cover.per1000(kits), mean, within, "unmet per 1,000 uses");
			},
		);
	},
);

describe("after each use", () => {
	const flat = { shares: flatDay, usesPerDay: 7.5 };
	const stays = [{ minutes: 110, alone: false }];
	const soaks = [
		{ minutes: 45, alone: false },
		{ minutes: 20, alone: true },
		{ minutes: 45, alone: false },
	];
	const leaves = [
		{ minutes: 90, alone: false },
		{ minutes: 20, alone: true },
	];
	test.each([
		{ ...flat, kits: 4, people: 1, work: stays, inexact: 0 },
		{ ...flat, kits: 5, people: 1, work: stays, inexact: 0 },
		{ ...flat, kits: 4, people: 2, work: stays, inexact: 0 },
		{ ...flat, shares: nightly, kits: 4, people: 1, work: stays, inexact: 0.005 },
		{ ...flat, shares: nightly, kits: 4, people: 2, work: stays, inexact: 0.005 },
		{ ...flat, shares: nightly, kits: 4, people: Infinity, work: stays, inexact: 0.005 },
		// The program counts the time alone as if it came before the work.
		{ ...flat, kits: 4, people: 1, work: leaves, inexact: 0.05 },
		{ ...flat, kits: 5, people: 1, work: leaves, inexact: 0.05 },
		{ ...flat, kits: 4, people: 1, work: soaks, inexact: 0.25 },
		{ ...flat, kits: 5, people: 1, work: soaks, inexact: 0.25 },
	])("$kits kits, $people people, work $work.length", ({ inexact, ...unit }) => {
		const { mean, standardError } = playedAfterEachUse(unit, 100_000, unit.kits);
		const minutes = (alone: boolean) =>
			unit.work.reduce((sum, part) => sum + (part.alone === alone ? part.minutes : 0), 0);
		const expected = new UnmetAfterEachUse({
			kind: "after_each_use",
			usesPerDay: [unit.usesPerDay],
			hourShares: unit.shares,
			hands: { people: unit.people, workMinutes: minutes(false), aloneMinutes: minutes(true) },
			readyLifeDays: null,
		}).per1000(unit.kits);
		const within = inexact * mean + STANDARD_ERRORS * standardError;
		expectWithin(expected, mean, within, "unmet per 1,000 uses");
	});
});
