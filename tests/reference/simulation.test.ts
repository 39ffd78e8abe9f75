import { describe, expect, test } from "vitest";
import { expiriesPerDay } from "../../src/core/kits/expiriesPerDay.ts";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { flatDay, type HourShares } from "../../src/core/rounds/dayClock.ts";
import { answerOf } from "../core/answerOf.ts";
import { equalRounds, oneByOne } from "../core/kits/reprocessed.ts";
import { expectWithin } from "../expectWithin.ts";
import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

const USES = 1_000_000;
const BATCHES = 200;
const DAY = 1440;
/** Chance alone goes further than this about once in 16,000 times. */
const STANDARD_ERRORS = 4;

function agrees(batches: readonly number[], expected: number, unit: string): void {
	const { mean, standardError } = meanOfBatches(batches);
	expect(standardError).toBeGreaterThan(0);
	expect(standardError).toBeLessThan(0.1 * expected);
	expectWithin(mean, expected, STANDARD_ERRORS * standardError, unit);
}

/** Share of uses per batch for which `isUnmet` says so, of 1,000. */
function unmetByBatch(nextUse: () => number, isUnmet: (minute: number) => boolean): number[] {
	const perBatch = USES / BATCHES;
	return Array.from({ length: BATCHES }, () => {
		let unmet = 0;
		for (let i = 0; i < perBatch; i++) if (isUnmet(nextUse())) unmet++;
		return (1000 * unmet) / perBatch;
	});
}

/** Uses of a day spread over its hours as given, by thinning the busiest hour's rate. */
function usesInTime(random: () => number, perDay: number, shares: HourShares): () => number {
	const busiest = Math.max(...shares);
	let now = 0;
	return () => {
		for (;;) {
			now += waitingTime(random, (perDay * busiest) / 60);
			const hour = Math.floor((now % DAY) / 60);
			if (random() * busiest < (shares[hour] as number)) return now;
		}
	};
}

const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

describe("in rounds", () => {
	test.each([
		{ kits: 1, perDay: 0.6, starts: [420, 840, 1260], turnaround: 110, shares: flatDay },
		{ kits: 2, perDay: 0.6, starts: [420, 840, 1260], turnaround: 110, shares: flatDay },
		{ kits: 4, perDay: 3, starts: [480, 1200], turnaround: 200, shares: nightly },
		{ kits: 5, perDay: 3, starts: [480, 1200], turnaround: 720, shares: nightly },
		{ kits: 6, perDay: 3, starts: [600], turnaround: 1000, shares: nightly },
	])(
		"$kits kits, $perDay uses a day, ready after $turnaround minutes",
		({ kits, perDay, starts, turnaround, shares }) => {
			/** Used kits that wait for a round, and those in the round under way until `ready`. */
			let waiting = 0;
			let inRound = 0;
			let ready = 0;
			let day = 0;
			let next = 0;
			const startOf = () => day * DAY + (starts[next] as number);
			const isUnmet = (minute: number) => {
				for (; startOf() <= minute; next = (next + 1) % starts.length, day += next === 0 ? 1 : 0) {
					inRound = waiting;
					waiting = 0;
					ready = startOf() + turnaround;
				}
				const away = waiting + (minute < ready ? inRound : 0);
				waiting++;
				return away >= kits;
			};
			const uses = usesInTime(randomNumbers(kits), perDay, shares);
			const expected = unmetPer1000(kits, equalRounds([perDay], starts, turnaround, shares));
			agrees(unmetByBatch(uses, isUnmet), expected, "unmet per 1,000 uses");
		},
	);
});

describe("after each use", () => {
	test.each([
		{ kits: 1, perDay: 0.6, turnaround: 110 },
		{ kits: 3, perDay: 10, turnaround: 180 },
	])(
		"$kits kits, $perDay uses a day, ready after $turnaround minutes",
		({ kits, perDay, turnaround }) => {
			const away: number[] = [];
			let first = 0;
			const isUnmet = (minute: number) => {
				while (first < away.length && (away[first] as number) + turnaround <= minute) first++;
				const unmet = away.length - first >= kits;
				away.push(minute);
				return unmet;
			};
			const uses = usesInTime(randomNumbers(100 + kits), perDay, flatDay);
			const expected = unmetPer1000(kits, oneByOne([perDay], turnaround));
			agrees(unmetByBatch(uses, isUnmet), expected, "unmet per 1,000 uses");
		},
	);
});

describe("ready kits gone out of date", () => {
	test.each([
		{ kits: 2, perDay: 0.6, life: 7 },
		{ kits: 4, perDay: 0.6, life: 7 },
		{ kits: 10, perDay: 2, life: 3.5 },
	])("$kits kits, $perDay uses a day, ready for $life days", ({ kits, perDay, life }) => {
		const random = randomNumbers(200 + kits);
		/** When each kit became ready, the oldest at `oldest`. */
		const readySince = new Float64Array(kits);
		let oldest = 0;
		let now = 0;
		const renew = () => {
			readySince[oldest] = now;
			oldest = (oldest + 1) % kits;
		};
		const perBatch = USES / BATCHES;
		const batches = Array.from({ length: BATCHES }, () => {
			const began = now;
			let expired = 0;
			for (let i = 0; i < perBatch; i++) {
				const use = now + waitingTime(random, perDay);
				while ((readySince[oldest] as number) + life <= use) {
					now = (readySince[oldest] as number) + life;
					renew();
					expired++;
				}
				now = use;
				renew();
			}
			return expired / (now - began);
		});
		const expected = answerOf(expiriesPerDay, {
			kitsInService: kits,
			usesPerDay: perDay,
			readyLifeDays: life,
		});
		agrees(batches, expected, "kits a day");
	});
});
