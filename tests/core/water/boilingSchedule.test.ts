import { describe, expect, test } from "vitest";
import type { Hearth, WaterNeed } from "../../../src/core/water/batch.ts";
import {
	boilingSchedule,
	canBeScheduled,
	scheduleOf,
} from "../../../src/core/water/boilingSchedule.ts";
import { fewestPots } from "../../../src/core/water/fewestPots.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

/** A pot of 10 L boils in 60 minutes by itself and cools in 300. */
const hearth: Hearth = {
	stoves: 1,
	pots: 2,
	potsOnStove: 2,
	potLitres: 10,
	netKw: (10 * 4.186 * 80) / 3600,
	drawnC: 20,
	boilingC: 100,
	holdMinutes: 0,
	coolMinutes: 300,
	keepsMinutes: 1440,
};
const need = (litres: number, from: number, until = from + 30): WaterNeed => ({
	litres,
	from,
	until,
});
const lit = (needs: readonly WaterNeed[], change: Partial<Hearth> = {}) =>
	scheduleOf(needs, { ...hearth, ...change }).fires.map(({ lightAt, litres, pots, stove }) => [
		Math.round(lightAt * 1e6) / 1e6,
		litres,
		pots.join(),
		stove,
	]);

describe("fires by the clock", () => {
	test.each<[string, WaterNeed[], Partial<Hearth>, unknown[]]>([
		["one pot, as late as it can be", [need(10, 1000)], {}, [[640, 10, "1", 1]]],
		["two side by side share the heat", [need(20, 1000)], {}, [[580, 20, "1,2", 1]]],
		[
			"batches follow each other, the rest first",
			[need(30, 1000)],
			{ pots: 3 },
			[[520, 30, "1,2,3", 1]],
		],
		[
			"a pot that still cools is not filled again: the rest is boiled hours before",
			[need(30, 1000)],
			{},
			[
				[220, 10, "1", 1],
				[580, 20, "1,2", 1],
			],
		],
		[
			"two rounds that want the same stove: the earlier is lit earlier",
			[need(20, 1000), need(20, 1050)],
			{ pots: 4 },
			[
				[510, 20, "1,2", 1],
				[630, 20, "3,4", 1],
			],
		],
		[
			"two stoves burn at once",
			[need(20, 1000), need(20, 1050)],
			{ pots: 4, stoves: 2 },
			[
				[580, 20, "1,2", 1],
				[630, 20, "3,4", 2],
			],
		],
		[
			"a round whose water may be old gives way to one whose must be fresh",
			[need(10, 1300), need(10, 1290, 2420)],
			{ pots: 4 },
			[
				[870, 10, "1", 1],
				[930, 10, "2", 1],
			],
		],
		["nothing to boil", [], {}, []],
	])("%s", (_what, needs, change, fires) => {
		expect(lit(needs, change)).toEqual(fires);
	});

	test("the hold is held for each batch, and what boils away is added", () => {
		const inputs = { ...hearth, potsOnStove: 1, pots: 3, holdMinutes: 20 };
		const [fire] = answerOf(boilingSchedule, { ...inputs, needs: [need(30, 1000)] }).fires;
		const away = (hearth.netKw * 1200) / 2257;
		expectWithin(fire?.startLitres, 30 + 3 * away, 1e-9, "L");
		expect(fire?.batches).toBe(3);
		expectWithin(fire?.offBoilAt, 700, 1e-9, "min");
		expectWithin(fire?.lightAt, 700 - 60 - (180 * (30 + 3 * away)) / 30, 1e-6, "min");
	});
});

describe("a load of pieces", () => {
	/** 10 L of which 2,257 kW·s a kilogram boil away for 20 minutes. */
	const away = (hearth.netKw * 1200) / 2257;
	const lights = 1000 - 6 * (10 + away);
	const pieces: WaterNeed = { litres: 10, from: 1000, until: 1020, isForPieces: true };

	test("boils when its step begins, in one pot, and nothing cools", () => {
		const [fire] = scheduleOf([pieces], hearth).fires;
		expect(fire).toMatchObject({ stove: 1, pots: [1], offBoilAt: 1020, coolAt: 1020 });
		expectWithin(fire?.lightAt, lights, 1e-9, "min");
		expectWithin(fire?.startLitres, 10 + away, 1e-9, "L");
	});

	test("rinse water gives way to it, whichever round is later", () => {
		// By itself it would be lit from 940 to 1000, for 1300.
		const { fires, without } = scheduleOf([need(10, 1300), pieces], hearth);
		expect(without).toEqual([]);
		expect(fires.map(({ need: of, offBoilAt }) => [of, Math.round(offBoilAt)])).toEqual([
			[0, Math.round(lights)],
			[1, 1020],
		]);
	});

	test("two at one hour want two stoves and two pots; the one that comes first has them", () => {
		const later = { ...pieces, from: 1010, until: 1030 };
		expect(scheduleOf([later, pieces], hearth).without).toEqual([0]);
		expect(scheduleOf([later, pieces], { ...hearth, stoves: 2 }).without).toEqual([]);
		expect(scheduleOf([later, pieces], { ...hearth, stoves: 2, pots: 1 }).without).toEqual([0]);
		expect(fewestPots([later, pieces], { ...hearth, stoves: 2 })).toBe(2);
	});
});

describe("water for which there is no place", () => {
	test("too old before it is used: none of that round is boiled, the others are", () => {
		const needs = [need(10, 400), need(10, 1000)];
		const made = scheduleOf(needs, { ...hearth, pots: 1, keepsMinutes: 400 });
		expect(made.without).toEqual([]);
		const crowded = [...needs, need(10, 1010)];
		const { without, fires } = scheduleOf(crowded, { ...hearth, pots: 1, keepsMinutes: 400 });
		expect(without).toHaveLength(1);
		expect(fires).toHaveLength(2);
		expect(fewestPots(crowded, { ...hearth, pots: 1, keepsMinutes: 400 })).toBe(2);
	});

	test("one pot after the other where side by side does not go", () => {
		// Side by side both pots would be filled at 580, while the first round's water cools until 640.
		const needs = [need(10, 640, 700), need(20, 1000, 1000)];
		expect(lit(needs, { keepsMinutes: 370 })).toEqual([
			[280, 10, "1", 1],
			[580, 20, "1,2", 1],
		]);
		const apart = scheduleOf(needs, { ...hearth, keepsMinutes: 370 }).fires[1];
		expect(apart?.taken.map(({ from }) => Math.round(from))).toEqual([580, 640]);
	});

	test("side by side where one pot after the other leaves as many rounds without", () => {
		const needs = [need(10, 400, 5000), need(20, 1000)];
		const { fires, without } = scheduleOf(needs, hearth);
		expect(without).toEqual([0]);
		expect(fires.map(({ batches, pots }) => [batches, pots])).toEqual([[1, [1, 2]]]);
	});

	test("a round that takes no water needs no fire and takes no room", () => {
		expect(lit([need(0, 640), need(10, 1000)])).toEqual([[640, 10, "1", 1]]);
		expect(canBeScheduled([need(0, 640), need(10, 1000)], hearth)).toBe(true);
	});

	test("so few pots are enough as do it one after the other", () => {
		const needs = [need(10, 640, 700), need(20, 1000, 1000)];
		expect(fewestPots(needs, { ...hearth, keepsMinutes: 370 })).toBe(2);
	});

	test("forty pots are looked for, and no more", () => {
		const all = { ...hearth, keepsMinutes: 340 };
		expect(fewestPots([need(400, 4000)], all)).toBe(40);
		expect(fewestPots([need(401, 4000)], all)).toBeUndefined();
	});

	test.each([
		["cooling takes longer than water keeps", { coolMinutes: 1500 }],
		["a stove that cannot do it, whatever the pots", { netKw: 0.05, keepsMinutes: 600 }],
	])("%s: no number of pots", (_what, change) => {
		const two = [need(10, 3000), need(10, 3000)];
		expect(fewestPots(two, { ...hearth, ...change })).toBeUndefined();
	});
});
