import { expect, test } from "vitest";
import { mostNumbers, type Numbers } from "../../../src/core/stock/mostNumbers.ts";
import { roundsLoadsAndKits } from "../../../src/core/stock/roundsLoadsAndKits.ts";
import { expectWithin } from "../../expectWithin.ts";

const poissonOf = (mean: number) => (k: number) => {
	let p = Math.exp(-mean);
	for (let i = 1; i <= k; i++) p *= mean / i;
	return p;
};
const MEANS = [0.7, 0, 1.6];
const AS_PLANNED = [{ means: MEANS, weight: 1 }];
const IN_LOAD = 2;

/** How likely the rounds come to just these numbers, by every number of kits in each. */
function likely(wanted: Numbers): number {
	const [one, other] = [poissonOf(0.7), poissonOf(1.6)];
	let sum = 0;
	for (let a = 0; a < 30; a++)
		for (let b = 0; b < 30; b++) {
			const rounds = Number(a > 0) + Number(b > 0);
			const loads = Math.ceil(a / IN_LOAD) + Math.ceil(b / IN_LOAD);
			const isWanted =
				rounds === wanted.rounds && loads - rounds === wanted.moreLoads && a + b === wanted.kits;
			if (isWanted) sum += one(a) * other(b);
		}
	return sum;
}

/** Every number apart: use of a round is as no other sum can be. */
const useOf = ({ rounds, moreLoads, kits }: Numbers) => rounds * 10_000 + moreLoads * 100 + kits;
const chanceOf = (most: Numbers, numbers: Numbers, limit?: number) => {
	const { first, chance } = roundsLoadsAndKits(AS_PLANNED, IN_LOAD, most, useOf, limit);
	return chance[useOf(numbers) - first] ?? 0;
};
const numbers = (rounds: number, moreLoads: number, kits: number) => ({ rounds, moreLoads, kits });
const FAR = numbers(3, 12, 30);

test.each([
	numbers(0, 0, 0),
	numbers(1, 0, 1),
	numbers(1, 0, 2),
	numbers(1, 1, 3),
	numbers(2, 0, 2),
	numbers(2, 0, 4),
	numbers(2, 1, 5),
	numbers(2, 2, 7),
	numbers(2, 0, 5),
	numbers(3, 0, 3),
])("rounds, loads and kits together: %o", (of) => {
	expectWithin(chanceOf(FAR, of), likely(of), 1e-12, "chance");
});

test.each([
	["kits", numbers(3, 12, 3), numbers(2, 0, 3), numbers(2, 1, 4)],
	["loads", numbers(3, 1, 30), numbers(2, 1, 5), numbers(2, 2, 7)],
])("only so many %s are followed: beyond them nothing is mixed in", (_what, most, kept, left) => {
	expectWithin(chanceOf(most, kept), likely(kept), 1e-12, "chance");
	expect(chanceOf(most, left)).toBe(0);
	const all = roundsLoadsAndKits(AS_PLANNED, IN_LOAD, most, useOf).chance.reduce(
		(s, p) => s + p,
		0,
	);
	let sum = 0;
	for (let rounds = 0; rounds <= 3; rounds++)
		for (let more = 0; more <= most.moreLoads; more++)
			for (let kits = 0; kits <= most.kits; kits++) sum += likely(numbers(rounds, more, kits));
	expectWithin(all, sum, 1e-12, "chance");
});

test("nor where loads are not followed", () => {
	const few = numbers(3, 0, 4);
	for (let rounds = 0; rounds <= 3; rounds++)
		for (let kits = 0; kits <= 4; kits++) {
			const of = numbers(rounds, 0, kits);
			expectWithin(chanceOf(few, of), chanceOf(numbers(3, 0, 30), of), 1e-17, "chance");
		}
});

test("what use does not go by is not followed, and use beyond the limit left out", () => {
	const rounds = roundsLoadsAndKits(AS_PLANNED, IN_LOAD, numbers(3, 0, 0), (of) => of.rounds);
	const [one, other] = [1 - Math.exp(-0.7), 1 - Math.exp(-1.6)];
	const expected = [(1 - one) * (1 - other), one + other - 2 * one * other, one * other];
	expected.forEach((chance, n) => {
		expectWithin(rounds.chance[n], chance, 1e-12, "chance");
	});
	expect(chanceOf(FAR, numbers(1, 0, 2), 10_001)).toBe(0);
	expectWithin(chanceOf(FAR, numbers(1, 0, 1), 10_001), likely(numbers(1, 0, 1)), 1e-12, "chance");
});

test.each([
	["rounds, loads and kits", FAR],
	["loads and kits", numbers(0, 12, 30)],
	["rounds and kits", numbers(3, 0, 30)],
	["rounds and loads", numbers(3, 12, 0)],
	["loads", numbers(0, 12, 0)],
	["rounds", numbers(3, 0, 0)],
])("levels of births, each by its weight: %s", (_what, most) => {
	const levels = [0.9, 0.1 - 1e-12, 1e-12].map((weight, i) => ({
		means: MEANS.map((mean) => mean * 2 ** i),
		weight,
	}));
	const { first, chance } = roundsLoadsAndKits(levels, IN_LOAD, most, useOf);
	const parts = levels.map(({ means, weight }) => ({
		alone: roundsLoadsAndKits([{ means, weight: 1 }], IN_LOAD, most, useOf),
		weight,
	}));
	for (let use = 0; use <= useOf(most); use++) {
		let sum = 0;
		for (const { alone, weight } of parts) sum += weight * (alone.chance[use - alone.first] ?? 0);
		expectWithin(chance[use - first] ?? 0, sum, 1e-15, `chance of ${use}`);
	}
});

test("the most that is followed is as far as chances go", () => {
	const by = (loads: boolean, kits: boolean) =>
		mostNumbers(MEANS, IN_LOAD, { rounds: true, loads, kits });
	expect(by(false, false)).toEqual(numbers(3, 0, 0));
	const { moreLoads, kits } = by(true, true);
	const beyond = poissonOf(2.3);
	expect(beyond(kits)).toBeGreaterThan(1e-17);
	expect(beyond(kits + 1)).toBeLessThan(1e-15);
	expect(moreLoads).toBeGreaterThan(kits / 3);
	expect(moreLoads).toBeLessThan(kits);
	expect([by(true, false), by(false, true)]).toEqual([
		numbers(3, moreLoads, 0),
		numbers(3, 0, kits),
	]);
});
