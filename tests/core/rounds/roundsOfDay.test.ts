import { describe, expect, test } from "vitest";
import { chanceAtMost, mean } from "../../../src/core/counts/counts.ts";
import { flatDay } from "../../../src/core/rounds/dayClock.ts";
import {
	kitsAfterEachUse,
	kitsInRounds,
	roundsTogether,
} from "../../../src/core/rounds/roundsOfDay.ts";
import { loadsOfDay, roundsThatRun } from "../../../src/core/rounds/roundsThatRun.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

const starts = [420, 840, 1260];
const quiet = {
	starts,
	hourShares: flatDay,
	usesYesterday: 0.6,
	usesToday: 0.6,
	expiriesYesterday: 0,
	expiriesToday: 0,
};

describe("kits in each round", () => {
	test.each([
		["a flat day: what came in over ten, seven and seven hours", {}, [0.25, 0.175, 0.175]],
		[
			"a first day with more: the night before counts three hours of yesterday",
			{ usesToday: 2.4 },
			[0.075 + 0.7, 0.7, 0.7],
		],
		["a busy yesterday", { usesYesterday: 2.4 }, [0.3 + 0.175, 0.175, 0.175]],
		[
			"expiries are spread over the day",
			{ expiriesToday: 0.24, expiriesYesterday: 0.24 },
			[0.35, 0.245, 0.245],
		],
		["one round takes the whole day", { starts: [420] }, [0.6]],
		["a round at midnight", { starts: [0, 720] }, [0.3, 0.3]],
		["nothing at all", { usesYesterday: 0, usesToday: 0 }, [0, 0, 0]],
	])("%s", (_what, change, kits) => {
		const rounds = answerOf(kitsInRounds, { ...quiet, ...change });
		expect(rounds.kits).toHaveLength(kits.length);
		kits.forEach((expected, i) => {
			expectWithin(rounds.kits[i], expected, 1e-12, "kits");
		});
	});

	test("kits that come in by day are taken by the later rounds", () => {
		const byDay = Array.from({ length: 24 }, (_, hour) => (hour >= 8 && hour < 16 ? 1 / 8 : 0));
		const { kits } = answerOf(kitsInRounds, { ...quiet, hourShares: byDay });
		[0, 0.45, 0.15].forEach((expected, i) => {
			expectWithin(kits[i], expected, 1e-12, "kits");
		});
	});

	test("all rounds of a day like yesterday take all its kits", () => {
		const { kits } = answerOf(kitsInRounds, {
			...quiet,
			expiriesToday: 0.1,
			expiriesYesterday: 0.1,
		});
		expectWithin(
			kits.reduce((sum, m) => sum + m, 0),
			0.7,
			1e-12,
			"kits",
		);
	});

	test("after each use all are one figure", () => {
		expect(answerOf(kitsAfterEachUse, { kits: 0.7 }).kits).toEqual([0.7]);
	});

	test("kinds of kit add up round by round and stay apart", () => {
		const one = answerOf(kitsInRounds, quiet);
		const other = answerOf(kitsInRounds, { ...quiet, usesToday: 1.2, usesYesterday: 1.2 });
		const both = answerOf(roundsTogether, { kinds: [one, other] });
		expectWithin(both.kits[0], 0.75, 1e-12, "kits");
		expect(both.byKind).toEqual([one.kits, other.kits]);
	});
});

describe("rounds that run", () => {
	test("their mean is the sum of the chances of at least one kit", () => {
		const rounds = answerOf(kitsInRounds, quiet);
		const expected = 1 - Math.exp(-0.25) + 2 * (1 - Math.exp(-0.175));
		expectWithin(mean(answerOf(roundsThatRun, { rounds })), expected, 1e-12, "rounds");
	});

	test("the chance that none runs is that no kit comes in", () => {
		const counts = answerOf(roundsThatRun, { rounds: answerOf(kitsInRounds, quiet) });
		expectWithin(chanceAtMost(counts, 0), Math.exp(-0.6), 1e-12, "chance");
		expect(counts.chance).toHaveLength(4);
	});

	test("never more than are listed, always all when busy", () => {
		const busy = answerOf(kitsInRounds, { ...quiet, usesYesterday: 500, usesToday: 500 });
		expectWithin(mean(answerOf(roundsThatRun, { rounds: busy })), 3, 1e-12, "rounds");
	});

	test("after each use every kit is a round", () => {
		const counts = answerOf(roundsThatRun, { rounds: answerOf(kitsAfterEachUse, { kits: 0.7 }) });
		expectWithin(mean(counts), 0.7, 1e-12, "rounds");
	});
});

describe("loads", () => {
	test("with a soak for one kit, kits are loads", () => {
		const rounds = answerOf(kitsInRounds, { ...quiet, usesYesterday: 3, usesToday: 3 });
		expectWithin(mean(answerOf(loadsOfDay, { rounds, kitsInLoad: 1 })), 3, 1e-11, "loads");
	});

	test("with a soak for all, rounds that run are loads", () => {
		const rounds = answerOf(kitsInRounds, quiet);
		expectWithin(
			mean(answerOf(loadsOfDay, { rounds, kitsInLoad: 50 })),
			mean(answerOf(roundsThatRun, { rounds })),
			1e-12,
			"loads",
		);
	});

	test("one round of mean 3, three kits a soak", () => {
		const rounds = answerOf(kitsInRounds, {
			...quiet,
			starts: [420],
			usesYesterday: 3,
			usesToday: 3,
		});
		let expected = 0;
		let chance = Math.exp(-3);
		for (let kits = 1; kits < 60; kits++) {
			chance *= 3 / kits;
			expected += Math.ceil(kits / 3) * chance;
		}
		expectWithin(mean(answerOf(loadsOfDay, { rounds, kitsInLoad: 3 })), expected, 1e-11, "loads");
	});

	test("after each use every kit is a load", () => {
		const rounds = answerOf(kitsAfterEachUse, { kits: 0.7 });
		expectWithin(mean(answerOf(loadsOfDay, { rounds, kitsInLoad: 3 })), 0.7, 1e-12, "loads");
	});
});
