import { expect, test } from "vitest";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { DayClock, flatDay, type HourShares } from "../../src/core/rounds/dayClock.ts";
import { kitsWithWater } from "../../src/core/rounds/kitsWithWater.ts";
import { answerOf } from "../core/answerOf.ts";
import { equalRounds } from "../core/kits/reprocessed.ts";
import { expectWithin } from "../expectWithin.ts";
import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

const DAY = 1440;
const BATCHES = 100;
const USES = 300_000;
const STANDARD_ERRORS = 4;
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

interface Case {
	readonly kits: number;
	readonly perDay: number;
	readonly starts: readonly number[];
	readonly minutes: number;
	readonly water: number;
	readonly shares: HourShares;
}

/**
 * Plays needs one after the other: each kit comes back at the end of the first round that
 * begins no earlier than its water is cool, whether or not there was a kit to send.
 */
function played({ kits, perDay, starts, minutes, water, shares }: Case, seed: number) {
	const random = randomNumbers(seed);
	const busiest = Math.max(...shares);
	let now = 0;
	let back: number[] = [];
	const nextUse = () => {
		do now += waitingTime(random, (perDay * busiest) / 60);
		while (random() * busiest >= (shares[Math.floor((now % DAY) / 60)] as number));
	};
	const returns = () => {
		const ready = now + water;
		const midnight = Math.floor(ready / DAY) * DAY;
		const round = [...starts, (starts[0] as number) + DAY].find((at) => midnight + at >= ready);
		return midnight + (round as number) + minutes;
	};
	return Array.from({ length: BATCHES }, () => {
		let unmet = 0;
		for (let use = 0; use < USES / BATCHES; use++) {
			nextUse();
			back = back.filter((minute) => minute > now);
			if (back.length >= kits) unmet++;
			back.push(returns());
		}
		return (1000 * unmet) / (USES / BATCHES);
	});
}

test.each<Case>([
	{ kits: 2, perDay: 0.8, starts: [420, 840, 1260], minutes: 110, water: 300, shares: flatDay },
	{ kits: 3, perDay: 1.5, starts: [420, 840, 1260], minutes: 110, water: 700, shares: nightly },
	{ kits: 5, perDay: 2, starts: [480], minutes: 200, water: 2000, shares: nightly },
])("kits that wait $water minutes for their water: $kits kits, rounds at $starts", (unit) => {
	const { kits, perDay, starts, minutes, water, shares } = unit;
	const plan = { ...equalRounds([perDay], starts, minutes, shares), waterMinutes: water };
	const { mean, standardError } = meanOfBatches(played(unit, kits));
	const expected = unmetPer1000(kits, plan);
	expect(standardError).toBeLessThan(0.1 * expected);
	expectWithin(mean, expected, STANDARD_ERRORS * standardError, "unmet per 1,000 uses");
	expect(expected).toBeGreaterThan(1.1 * unmetPer1000(kits, { ...plan, waterMinutes: 0 }));
});

test("rounds of days that differ: what came between the last moments for them, hour by hour", () => {
	const inputs = {
		starts: [420, 1140],
		hourShares: nightly,
		uses: [3, 1, 2],
		expiriesYesterday: 0.5,
		expiriesToday: 0.5,
	};
	const clock = new DayClock(inputs.uses, nightly);
	for (const waterMinutes of [0, 200, 700, 1500]) {
		const { kits } = answerOf(kitsWithWater, { ...inputs, waterMinutes });
		const last = [2 * DAY - 300, 2 * DAY + 420, 2 * DAY + 1140].map((at) => at - waterMinutes);
		kits.forEach((mean, i) => {
			const used = clock.between(last[i] as number, last[i + 1] as number);
			expectWithin(mean, used + 0.5 * (720 / DAY), 1e-9, "kits");
		});
	}
});
