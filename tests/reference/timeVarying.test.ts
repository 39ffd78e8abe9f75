import { describe, test } from "vitest";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { kitsInRounds } from "../../src/core/rounds/roundsOfDay.ts";
import { expectWithin } from "../expectWithin.ts";

/** Uses come by a Poisson process whose intensity goes with the hour: what the program says of it, beside integrals summed minute by minute. */
const night = [2, 3, 4, 5, 5, 4, 3, 3, 2, 2, 2, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2];
const total = night.reduce((sum, share) => sum + share, 0);
const hourShares = night.map((share) => share / total);
const MINUTES = 1440;

/** Uses a minute, `minute` counted from the first midnight; the day before is like the first. */
function intensity(usesPerDay: readonly number[], minute: number): number {
	const day = Math.min(Math.max(Math.floor(minute / MINUTES), 0), usesPerDay.length - 1);
	const inDay = ((minute % MINUTES) + MINUTES) % MINUTES;
	return ((usesPerDay[day] as number) * (hourShares[Math.floor(inDay / 60)] as number)) / 60;
}

function integral(from: number, to: number, of: (minute: number) => number): number {
	let sum = 0;
	for (let minute = from; minute < to; minute++) sum += of(minute + 0.5);
	return sum;
}

/** P(N ≥ kits) of a Poisson count. */
function atLeast(kits: number, mean: number): number {
	let term = Math.exp(-mean);
	let below = 0;
	for (let k = 0; k < kits; k++) {
		below += term;
		term *= mean / (k + 1);
	}
	return 1 - below;
}

describe("after each use, hands without limit: a need at t finds none where as many were used in the minutes before as there are kits", () => {
	test.each([
		[[6], 110, 3],
		[[6, 2, 9], 110, 3],
		[[0.6, 1.2], 300, 2],
		[[20, 30], 45, 4],
	])("%j uses a day, %d minutes, %d kits", (usesPerDay, minutes, kits) => {
		const rate = (minute: number) => intensity(usesPerDay, minute);
		const days = usesPerDay.length * MINUTES;
		const unmet = integral(
			0,
			days,
			(minute) =>
				rate(minute) *
				atLeast(kits, integral(Math.floor(minute) - minutes, Math.floor(minute), rate)),
		);
		const expected = (1000 * unmet) / integral(0, days, rate);
		const found = unmetPer1000(kits, {
			kind: "after_each_use",
			usesPerDay,
			hourShares,
			hands: { people: Number.POSITIVE_INFINITY, workMinutes: minutes, aloneMinutes: 0 },
			readyLifeDays: null,
		});
		// The program looks every 15 minutes.
		expectWithin(found, expected, 0.01 * expected, "per 1,000");
	});
});

test("kits of a round: all that were used since the start of the round before", () => {
	const starts = [7 * 60, 14 * 60 + 20, 21 * 60];
	const kits = kitsInRounds.compute({
		starts,
		hourShares,
		usesYesterday: 4,
		usesToday: 7,
		expiriesYesterday: 0,
		expiriesToday: 0,
	});
	const rate = (minute: number) => intensity([4, 7], minute + MINUTES);
	const since = [(starts[2] as number) - MINUTES, ...starts.slice(0, 2)];
	starts.forEach((start, round) => {
		expectWithin(
			(kits as { kits: readonly number[] }).kits[round],
			integral(since[round] as number, start, rate),
			1e-9,
			"kits",
		);
	});
});
