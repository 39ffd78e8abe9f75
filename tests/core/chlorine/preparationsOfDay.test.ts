import { describe, expect, test } from "vitest";
import { preparationsOfDay } from "../../../src/core/chlorine/preparationsOfDay.ts";
import { chanceAtMost, mean } from "../../../src/core/counts/counts.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { inRounds, oneByOne } from "./aDay.ts";

const prepared = (rounds: RoundsOfDay, made: "each_round" | "each_day", lifeHours = 24) =>
	answerOf(preparationsOfDay, { rounds, made, lifeHours });

const three = inRounds([420, 840, 1260], [0.5, 1, 2]);
const run = three.kits.map((m) => 1 - Math.exp(-m)) as [number, number, number];

describe("in rounds", () => {
	test("for each round: as often as rounds run", () => {
		expectWithin(
			mean(prepared(three, "each_round")),
			run[0] + run[1] + run[2],
			1e-12,
			"preparations",
		);
	});

	test("once a day: on a day with a round", () => {
		const counts = prepared(three, "each_day");
		expect(counts.chance).toHaveLength(2);
		expectWithin(mean(counts), 1 - Math.exp(-3.5), 1e-12, "preparations");
	});

	test("a life of eight hours: the morning's solution serves the afternoon, not the night", () => {
		const again = run[0] * run[2];
		const first = 1 - Math.exp(-3.5);
		// Afternoon's solution, made where the morning's round did not run, serves the night.
		expectWithin(mean(prepared(three, "each_day", 8)), first + again, 1e-12, "preparations");
	});

	test("at a level of births that is not known, as often as rounds run at every level of it", () => {
		const level = { mean: 3.5, levelShape: 2, daySpread: 0 };
		const forecast = { ...three, forecast: { level, sure: [[0, 0, 0]] } };
		// None comes of a negative binomial number of size 2 with (1 + mean ÷ 2)^−2.
		const runs = (kits: number) => 1 - (1 + kits / 2) ** -2;
		const wanted = runs(0.5) + runs(1) + runs(2);
		expectWithin(mean(prepared(forecast, "each_round")), wanted, 1e-3, "preparations");
		expectWithin(mean(prepared(forecast, "each_day")), runs(3.5), 1e-3, "preparations");
	});

	test("a life as long as the gap does not reach the next round", () => {
		const counts = prepared(three, "each_day", 7);
		expectWithin(mean(counts), run[0] + run[1] + run[2], 1e-12, "preparations");
		expectWithin(
			mean(prepared(three, "each_day", 1)),
			run[0] + run[1] + run[2],
			1e-12,
			"preparations",
		);
	});

	test("chances add up to 1", () => {
		for (const life of [1, 7, 8, 14, 15, 24])
			expectWithin(chanceAtMost(prepared(three, "each_day", life), 9), 1, 1e-12, "chance");
	});

	test("a round every hour with a life of an hour is prepared for each round", () => {
		const hours = Array.from({ length: 17 }, (_, hour) => hour * 60);
		const busy = inRounds(
			hours,
			hours.map(() => 0.5),
		);
		expectWithin(
			mean(prepared(busy, "each_day", 1)),
			17 * (1 - Math.exp(-0.5)),
			1e-9,
			"preparations",
		);
	});
});

describe("after each use", () => {
	test("for each kit, or once on a day with a kit", () => {
		expectWithin(mean(prepared(oneByOne(0.7), "each_round")), 0.7, 1e-12, "preparations");
		expectWithin(
			mean(prepared(oneByOne(0.7), "each_day")),
			1 - Math.exp(-0.7),
			1e-12,
			"preparations",
		);
	});

	test("a shorter life needs more, never more than the kits or than fit into a day", () => {
		let last = 0;
		for (const life of [24, 12, 8, 4, 2, 1]) {
			const now = mean(prepared(oneByOne(5), "each_day", life));
			expect(now).toBeGreaterThan(last);
			expect(now).toBeLessThan(Math.min(5, 24 / life + 1));
			last = now;
		}
	});

	test("with a life of half a day a second one is made where a kit comes after the first one's life", () => {
		// The first kit comes at t; another after t + 12 h, t below 12 h.
		const rate = 3;
		const half = rate / 2;
		const second = 1 - Math.exp(-half) - half * Math.exp(-half);
		expectWithin(
			mean(prepared(oneByOne(rate), "each_day", 12)),
			1 - Math.exp(-rate) + second,
			1e-12,
			"preparations",
		);
	});
});

test("no solution lives longer than a day", () => {
	const inputs = { rounds: three, made: "each_day", lifeHours: 25 } as const;
	expect(refusalOf(preparationsOfDay, inputs).map((p) => p.code)).toEqual(["outside-limits"]);
});
