import { expect, test } from "vitest";
import {
	type InRounds,
	type RoundOfPlan,
	RoundsGoneThrough,
} from "../../../src/core/kits/roundsGoneThrough.ts";
import { RunOfRounds } from "../../../src/core/kits/runOfRounds.ts";
import { flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Two kits come on average to the first round of a day, which takes two; one to the second, which takes four. */
const plan = (change: Partial<InRounds> = {}) =>
	new RoundsGoneThrough({
		kind: "in_rounds",
		starts: [240, 720],
		length: { perRound: 0, perKit: 240, loads: [] },
		plannedMinutes: 240,
		usesPerDay: [3, 3, 3],
		hourShares: flatDay,
		life: null,
		...change,
	});
const gone = { days: 7, renewal: "when_expired" } as const;

/** How many wait when the rounds of a day begin, followed one by one until how it began is forgotten. */
function followed(kits: number, came = [2, 1], most = [2, 4]): number[][] {
	const day: number[][] = [];
	let begins: number[] = [1];
	for (let round = 0; round < 400; round++) {
		const mean = came[round % 2] as number;
		const taken = most[(round + 1) % 2] as number;
		const next = new Array<number>(kits + 1).fill(0);
		begins.forEach((p, n) => {
			let q = p * Math.exp(-mean);
			for (let k = 0; k < 60 + 2 * mean; k++) {
				const at = Math.min(kits, Math.max(0, n - taken) + k);
				next[at] = (next[at] as number) + q;
				q *= mean / (k + 1);
			}
		});
		begins = next;
		day[round % 2] = begins;
	}
	return day;
}

test.each([2, 3, 6])("%d kits: what a round cannot take waits for the next", (kits) => {
	const begun = new RunOfRounds(kits, plan()).rounds();
	const most = Math.min(kits, 4);
	expect(begun.map((round) => round.most)).toEqual([2, most, 2, most, 2, most]);
	const day = followed(kits);
	begun.forEach(({ begins }, i) => {
		expect(begins).toHaveLength(kits + 1);
		begins.forEach((chance, n) => {
			expectWithin(chance, day[i % 2]?.[n] as number, 1e-8, "chance");
		});
	});
});

test("of many kits, so few as hardly ever come are never there, nor so many", () => {
	const kits = 250;
	const many = plan({ usesPerDay: [150], length: { perRound: 0, perKit: 4.75, loads: [] } });
	const begun = new RunOfRounds(kits, many).rounds();
	expect(begun.map(({ most }) => most)).toEqual([101, 202]);
	const day = followed(kits, [100, 50], [101, 202]);
	begun.forEach(({ begins }, i) => {
		day[i]?.forEach((chance, n) => {
			expectWithin(begins[n] ?? 0, chance, 1e-8, "chance");
		});
	});
});

test("the days before the plan are like its first, whatever comes after it", () => {
	const first = (...usesPerDay: number[]) =>
		[...(new RunOfRounds(6, plan({ usesPerDay })).rounds()[0]?.begins ?? [])].slice(0, 7);
	// On its last day far more comes than the rounds take.
	const [quiet, busy] = [first(0.3), first(0.3, 12)];
	quiet.forEach((chance, n) => {
		expectWithin(busy[n], chance, 1e-9, "chance");
	});
});

test("rounds that are alike and begin alike are one object, also with kits left over", () => {
	const long = plan({ usesPerDay: new Array(40).fill(3) });
	const begun = new RunOfRounds(12, long).rounds();
	for (const at of [60, 61]) expect(begun[at]).toBe(begun[at + 2]);
	expect(begun[60]).not.toBe(begun[61]);
	for (const { begins } of begun)
		expectWithin(
			begins.reduce((sum, chance) => sum + chance, 0),
			1,
			1e-9,
			"chance",
		);
});

test.each([
	["the last round of a day", gone, 1, true, true],
	["not the first", gone, 0, true, false],
	["not where kits are renewed in time", { ...gone, renewal: "in_time" as const }, 1, true, false],
	["nor where they keep for ever", null, 1, true, false],
	["nor where only uses count", gone, 1, false, false],
])("kits go out of date at midnight after %s", (_what, life, at, renewing, some) => {
	const all = plan({ life, usesPerDay: [0.2, 0.2] });
	const lapses = new RunOfRounds(3, all, renewing).lapses(all.rounds[at] as RoundOfPlan);
	expect(lapses !== undefined).toBe(some);
	if (!lapses) return;
	// From the round to midnight, twelve hours.
	expectWithin(lapses.used[0], Math.exp(-0.2 / 2), 1e-12, "chance");
	expect(lapses.used).toHaveLength(4);
});

test("unless it is said otherwise, kits go out of date", () => {
	const all = plan({ life: gone, usesPerDay: [0.2, 0.2] });
	expect(new RunOfRounds(3, all).lapses(all.rounds[1] as RoundOfPlan)).toBeDefined();
});
