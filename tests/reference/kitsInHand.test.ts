import { describe, expect, test } from "vitest";
import { chanceAtMost, mean } from "../../src/core/counts/counts.ts";
import { readyAt } from "../../src/core/kits/readyAt.ts";
import type { HourShares } from "../../src/core/rounds/dayClock.ts";
import { kitsInRounds, roundsTogether } from "../../src/core/rounds/roundsOfDay.ts";
import { loadsOfDay, roundsThatRun } from "../../src/core/rounds/roundsThatRun.ts";
import { answerOf } from "../core/answerOf.ts";
import { equalRounds } from "../core/kits/reprocessed.ts";
import { expectWithin } from "../expectWithin.ts";
import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

const DAY = 1440;
const DAYS = 40_000;
const BATCHES = 200;
/** Chance alone goes further than this about once in 16,000 times. */
const STANDARD_ERRORS = 4;
const shares: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

function agrees(batches: readonly number[], expected: number, unit: string): void {
	const { mean: found, standardError } = meanOfBatches(batches);
	expect(standardError).toBeGreaterThan(0);
	expect(standardError).toBeLessThan(0.1 * expected);
	expectWithin(found, expected, STANDARD_ERRORS * standardError, unit);
}

/** Clock minutes of the uses of one day, by thinning the busiest hour's rate. */
function usesOfDay(random: () => number, perDay: number): number[] {
	const busiest = Math.max(...shares);
	const uses: number[] = [];
	for (let now = 0; ; ) {
		now += waitingTime(random, (perDay * busiest) / 60);
		if (now >= DAY) return uses;
		if (random() * busiest < (shares[Math.floor(now / 60)] as number)) uses.push(now);
	}
}

/** Sums a number a day into long batches, and gives the batches' means. */
function inBatches(ofDay: readonly number[]): number[] {
	const size = ofDay.length / BATCHES;
	return Array.from(
		{ length: BATCHES },
		(_, b) => ofDay.slice(b * size, (b + 1) * size).reduce((sum, x) => sum + x, 0) / size,
	);
}

describe("kits ready at an hour, counted out over many days", () => {
	// The night's round goes on past midnight.
	const starts = [420, 1320];
	const turnaround = 200;
	const kinds = [
		{ kits: 3, perDay: 1.8 },
		{ kits: 2, perDay: 0.7 },
	];

	test.each([30, 90, 450, 750, 1230, 1410])("at minute %d of the day", (minute) => {
		kinds.forEach(({ kits, perDay }, kind) => {
			const random = randomNumbers(1000 * kind + minute);
			let yesterday = usesOfDay(random, perDay).map((use) => use - DAY);
			const ready: number[] = [];
			const none: number[] = [];
			for (let day = 0; day < DAYS; day++) {
				const today = usesOfDay(random, perDay);
				// A used kit goes into the first round after its use, and is ready when that ends.
				const out = [...yesterday, ...today].filter((use) => {
					const clock = (use + DAY) % DAY;
					const start = starts.find((s) => s >= clock) ?? DAY + (starts[0] as number);
					return use <= minute && use - clock + start + turnaround > minute;
				}).length;
				ready.push(Math.max(0, kits - out));
				none.push(out >= kits ? 1000 : 0);
				yesterday = today.map((use) => use - DAY);
			}
			const moment = readyAt(kits, equalRounds([perDay], starts, turnaround, shares), minute);
			agrees(inBatches(ready), moment.ready, "kits ready");
			agrees(inBatches(none), moment.nonePer1000, "per 1,000");
		});
	});
});

test("rounds and loads with the kits of two kinds in them", () => {
	const starts = [420, 840, 1260];
	const perDay = [1.1, 0.8] as const;
	const kitsInLoad = 2;
	const random = randomNumbers(77);
	let late = perDay.map((uses) => usesOfDay(random, uses).filter((use) => use > 1260).length);
	const rounds: number[] = [];
	const loads: number[] = [];
	const allRun: number[] = [];
	for (let day = 0; day < DAYS; day++) {
		const uses = perDay.map((of) => usesOfDay(random, of));
		const inRound = starts.map((start, i) =>
			uses.reduce((sum, of, kind) => {
				const since = i === 0 ? 0 : (starts[i - 1] as number);
				const fromNight = i === 0 ? (late[kind] as number) : 0;
				return sum + fromNight + of.filter((use) => use > since && use <= start).length;
			}, 0),
		);
		late = uses.map((of) => of.filter((use) => use > 1260).length);
		rounds.push(inRound.filter((kits) => kits > 0).length);
		loads.push(inRound.reduce((sum, kits) => sum + Math.ceil(kits / kitsInLoad), 0));
		allRun.push(inRound.every((kits) => kits > 0) ? 1 : 0);
	}
	const kinds = perDay.map((uses) =>
		answerOf(kitsInRounds, {
			starts,
			hourShares: shares,
			usesYesterday: uses,
			usesToday: uses,
			expiriesYesterday: 0,
			expiriesToday: 0,
		}),
	);
	const together = answerOf(roundsTogether, { kinds });
	const run = answerOf(roundsThatRun, { rounds: together });
	agrees(inBatches(rounds), mean(run), "rounds");
	agrees(inBatches(allRun), 1 - chanceAtMost(run, 2), "days on which all rounds run");
	agrees(inBatches(loads), mean(answerOf(loadsOfDay, { rounds: together, kitsInLoad })), "loads");
});
