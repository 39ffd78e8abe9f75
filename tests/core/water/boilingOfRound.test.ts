import { describe, expect, test } from "vitest";
import { boilingOfRound } from "../../../src/core/water/boilingOfRound.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

const round = {
	loads: 1,
	bucketsPerLoad: 3,
	bucketLitres: 10,
	solutionLitres: 0,
	potLitres: 10,
	pots: 2,
	netKw: 1,
	drawnC: 25,
	boilingC: 100,
	holdMinutes: 20,
	coolMinutes: 440,
};
const boiling = (change: Partial<typeof round> = {}) =>
	answerOf(boilingOfRound, { ...round, ...change });

describe("one load of 30 L in two pots of 10 L", () => {
	const boiled = boiling();
	// Two batches, each held 20 minutes at 1 kW: 2 × 1,200 kJ boil away 1.063 kg.
	const start = 30 + 2400 / 2257;
	test.each([
		["litres", 30],
		["batches", 2],
		["startLitres", start],
		["kj", start * 4.186 * 75],
		["heatMinutes", (start * 4.186 * 75) / 60],
		["holdMinutes", 20],
		["coolMinutes", 440],
		["allMinutes", (start * 4.186 * 75) / 60 + 40 + 440],
	] as const)("%s: %d", (part, expected) => {
		expectWithin(boiled[part], expected, 1e-9, part);
	});
});

describe("batches", () => {
	test.each([
		[1, 10, 2, 2],
		[1, 10, 3, 1],
		[1, 15, 2, 1],
		[2, 10, 2, 3],
		[2, 10, 1, 6],
		[0, 10, 2, 0],
	])("%d loads in pots of %d L, %d at once: %d", (loads, potLitres, pots, batches) => {
		expect(boiling({ loads, potLitres, pots }).batches).toBe(batches);
	});
});

test("more pots share the fire: the heating does not get shorter, only the holding", () => {
	const [two, three] = [boiling({ holdMinutes: 0 }), boiling({ holdMinutes: 0, pots: 3 })];
	expectWithin(three.heatMinutes, two.heatMinutes, 1e-9, "min");
	expect(boiling({ pots: 3 }).allMinutes).toBeLessThan(boiling().allMinutes);
});

test("water drawn at the boil needs no heating", () => {
	expect(boiling({ drawnC: 100, boilingC: 93 })).toMatchObject({
		heatMinutes: 0,
		kj: 0,
		allMinutes: 480,
	});
});

test("nothing to boil takes no water and no heat", () => {
	expect(boiling({ loads: 0 })).toMatchObject({ litres: 0, startLitres: 0, kj: 0 });
});

test.each([
	["netKw", 0],
	["pots", 0],
	["potLitres", 0],
	["loads", -1],
] as const)("%s of %d is refused", (input, value) => {
	expect(refusalOf(boilingOfRound, { ...round, [input]: value }).map((p) => p.code)).toEqual([
		"outside-limits",
	]);
});
