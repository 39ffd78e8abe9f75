import { describe, expect, test } from "vitest";
import { UnmetAfterEachUse } from "../../src/core/kits/unmetAfterEachUse.ts";
import { flatDay, type HourShares } from "../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../expectWithin.ts";
import { type PlayedKind, type PlayedKinds, playedKinds } from "./playedKinds.ts";

/** Chance alone goes further than this about once in 16,000 times. */
const STANDARD_ERRORS = 4;
const WORK = 110;
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

const keeps = (kits: number, usesPerDay: number): PlayedKind => ({
	kits,
	usesPerDay,
	aloneMinutes: 0,
	lifeDays: Number.POSITIVE_INFINITY,
});
const sentAway = (kits: number, usesPerDay: number): PlayedKind => ({
	...keeps(kits, usesPerDay),
	aloneMinutes: 1440 - WORK,
});
const lapses = (kits: number, usesPerDay: number, lifeDays: number): PlayedKind => ({
	...keeps(kits, usesPerDay),
	lifeDays,
});

/** What the program says of each kind, and a simulation that shares no code with it. */
function both(kinds: readonly PlayedKind[], unit: Omit<PlayedKinds, "kinds">, days: number) {
	const found = playedKinds({ kinds, ...unit }, days, kinds.length);
	const all = kinds.reduce((sum, { usesPerDay }) => sum + usesPerDay, 0);
	const inQueue = kinds.map((kind) => ({ ...kind, days: kind.lifeDays }));
	return kinds.map(({ kits, usesPerDay, aloneMinutes, lifeDays }, k) => {
		const expected = new UnmetAfterEachUse({
			kind: "after_each_use",
			usesPerDay: [usesPerDay],
			hourShares: unit.shares,
			hands: { people: unit.people, workMinutes: unit.workMinutes, aloneMinutes },
			readyLifeDays: Number.isFinite(lifeDays) ? lifeDays : null,
			others: {
				share: usesPerDay / all,
				own: inQueue[k] as (typeof inQueue)[0],
				kinds: inQueue.filter((_, i) => i !== k),
			},
		}).per1000(kits);
		return { expected, ...(found[k] as (typeof found)[0]) };
	});
}

const onePerson = { people: 1, workMinutes: WORK, shares: flatDay };

/** calculations.md 3: a person stays with a kit from start to end, whatever its kind. */
describe("after each use, kinds that share the people: exact but for chance", () => {
	test.each([
		// 25 births, 15 of 100 with each: as one kind 4, 5 and 6 kits leave 32.7, 11.7 and 4.2.
		{ name: "halves", kinds: [keeps(4, 3.75), keeps(5, 3.75)], unit: onePerson, inexact: 0 },
		{ name: "nearly full", kinds: [keeps(8, 8), keeps(6, 3.8)], unit: onePerson, inexact: 0 },
		{ name: "one rarely used", kinds: [keeps(5, 7), keeps(2, 0.5)], unit: onePerson, inexact: 0 },
		{
			name: "three kinds and two people",
			kinds: [keeps(4, 6), keeps(3, 3), keeps(2, 2)],
			unit: { ...onePerson, people: 2 },
			inexact: 0,
		},
		{
			name: "more by night",
			kinds: [keeps(4, 3.75), keeps(3, 2)],
			unit: { ...onePerson, shares: nightly },
			inexact: 0.005,
		},
		// The program counts kits of the other kind as away as long as its own.
		{
			name: "one sent away",
			kinds: [keeps(3, 3), sentAway(4, 2)],
			unit: onePerson,
			inexact: 0.03,
		},
		{
			name: "one sent away, more by night",
			kinds: [keeps(3, 3), sentAway(4, 2)],
			unit: { ...onePerson, shares: nightly },
			inexact: 0.03,
		},
	])("$name", ({ kinds, unit, inexact }) => {
		for (const { expected, mean, standardError } of both(kinds, unit, 100_000)) {
			expect(standardError).toBeLessThan(0.15 * mean);
			const within = inexact * mean + STANDARD_ERRORS * standardError;
			expectWithin(expected, mean, within, "unmet per 1,000 uses");
		}
	});
});

/** calculations.md 10: cover within 25 % or 0.1 per 1,000. */
describe("after each use, kinds that share the people and go out of date", () => {
	test.each([
		{ name: "five kinds", kinds: [2, 3, 3, 4, 4].map((kits, k) => lapses(kits, 0.6 / (k + 1), 7)) },
		{ name: "many of another", kinds: [lapses(2, 0.3, 90), lapses(10, 0.1, 7)] },
		{ name: "three days", kinds: [lapses(2, 0.3, 3), lapses(2, 0.1, 3)] },
		{ name: "more kits, three days", kinds: [lapses(3, 0.6, 3), lapses(6, 0.2, 3)] },
		{ name: "one day", kinds: [lapses(3, 0.6, 1), lapses(3, 0.2, 1), lapses(3, 0.2, 1)] },
		{ name: "many uses", kinds: [lapses(3, 2, 7), lapses(6, 1, 7)] },
		{
			name: "two people, more by night",
			kinds: [lapses(3, 2, 4), lapses(6, 1, 4)],
			unit: { ...onePerson, people: 2, shares: nightly },
		},
	])("$name", ({ kinds, unit = onePerson }) => {
		for (const { expected, mean, standardError } of both(kinds, unit, 500_000)) {
			const within = Math.max(0.25 * mean, 0.1) + 3 * standardError;
			expectWithin(expected, mean, within, "unmet per 1,000 uses");
		}
	});
});
