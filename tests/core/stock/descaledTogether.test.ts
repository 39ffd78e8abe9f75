import { describe, expect, test } from "vitest";
import { type Counts, chanceAtMost } from "../../../src/core/counts/counts.ts";
import { poissonTerms } from "../../../src/core/counts/poisson.ts";
import { moved, spread } from "../../../src/core/counts/spread.ts";
import { alikeUses } from "../../../src/core/stock/alikeUses.ts";
import { BoundsOfUse } from "../../../src/core/stock/boundsOfUse.ts";
import { descaledTogether } from "../../../src/core/stock/descaledTogether.ts";
import { withDescaling } from "../../../src/core/stock/withDescaling.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Kits that use 3.3 steps each, in a round that uses `perRound` besides where it runs. */
function round(mean: number, perRound: number): Round {
	const use = (kits: number) => (kits === 0 ? 0 : perRound + 3.3 * kits);
	return { used: spread(poissonTerms(mean), use), idle: Math.exp(-mean) };
}

interface Round {
	readonly used: Counts;
	readonly idle: number;
}

/** Every product, one after the other. */
function oneByOne(perDescale: number, every: number, rounds: readonly Round[], most: number) {
	let since = Array.from({ length: every }, () => new Float64Array(most + 1));
	(since[0] as Float64Array)[0] = 1;
	for (const { used, idle } of rounds) {
		const { first, chance } = used;
		const running = chance.map((p, i) => (first + i === 0 ? p - idle : p));
		const before = since;
		since = before.map((chances) => chances.map((p) => p * idle));
		before.forEach((chances, phase) => {
			const use = moved({ first, chance: running }, phase === 0 ? perDescale : 0);
			const now = since[(phase + 1) % every] as Float64Array;
			chances.forEach((p, sofar) => {
				if (p < 1e-30) return;
				const from = sofar + use.first;
				const end = Math.min(use.chance.length, most + 1 - from);
				for (let i = 0; i < end; i++)
					now[from + i] = (now[from + i] as number) + p * (use.chance[i] as number);
			});
		});
	}
	return since.reduce((all, chances) => all.map((chance, i) => chance + (chances[i] as number)));
}

const times = (count: number, ...rounds: Round[]) =>
	Array.from({ length: count * rounds.length }, (_, i) => rounds[i % rounds.length] as Round);

const two = [round(9, 20), round(4, 5)];
const cases = (
	[
		["in whole steps", 40, 7, times(8, ...two), 1500],
		["in parts of a step", 17.3, 7, times(8, ...two), 1500],
		["with every round", 30, 1, times(16, round(60, 5)), 4500],
		["of three kinds", 1.5, 2, times(8, round(9, 2), round(14, 8), round(20, 1)), 2000],
		["where most do not run", 250, 7, times(15, round(0.1, 900.5), round(0.02, 333)), 12_000],
		["where descalings take nearly all", 400, 1, times(16, round(60, 5)), 11_000],
		["beyond which some is left out", 40, 7, times(8, ...two), 700],
	] as const
).map(([what, perDescale, every, rounds, most]) => ({
	what,
	perDescale,
	every,
	most,
	used: rounds.map((round) => round.used),
	idle: rounds.map((round) => round.idle),
	wanted: oneByOne(perDescale, every, rounds, most),
}));

describe("descalings of many rounds are added up as round by round", () => {
	test.each(cases)("$what", ({ perDescale, every, used, idle, most, wanted }) => {
		const found = descaledTogether(perDescale, every, used, idle, most) as Counts;
		expect(found.first + found.chance.length).toBeLessThanOrEqual(most + 1);
		for (let amount = 0; amount <= most; amount++)
			expectWithin(
				found.chance[amount - found.first] ?? 0,
				wanted[amount] as number,
				1e-14,
				`chance of ${amount}`,
			);
		expect(withDescaling(perDescale, every, used, idle, most)).toEqual(found);
	});

	test.each([1, 2, 3])(
		"few rounds are left to round by round, with every %d a descaling",
		(every) => {
			const few = times(5, round(1, 2), round(0.4, 6));
			const [used, idle] = [few.map((round) => round.used), few.map((round) => round.idle)];
			expect(descaledTogether(9, every, used, idle, 400)).toBeUndefined();
			const found = withDescaling(9, every, used, idle, 400);
			oneByOne(9, every, few, 400).forEach((wanted, amount) => {
				expectWithin(found.chance[amount - found.first] ?? 0, wanted, 1e-14, `chance of ${amount}`);
			});
		},
	);

	test("where hardly ever so little is used there is no chance of it", () => {
		const many = times(20, ...two);
		const [used, idle] = [many.map((round) => round.used), many.map((round) => round.idle)];
		const found = descaledTogether(40, 7, used, idle, 900) as Counts;
		expect(chanceAtMost(found, Number.POSITIVE_INFINITY)).toBe(0);
	});
});

describe("use is hardly ever beyond its bounds", () => {
	const chanceOf = (wanted: Float64Array, from: number, end?: number) =>
		wanted.slice(from, end).reduce((sum, chance) => sum + chance, 0);
	test.each(cases)("$what", ({ perDescale, every, used, idle, wanted }) => {
		const bounds = new BoundsOfUse(alikeUses(used, idle), perDescale, every);
		expect(chanceOf(wanted, bounds.most + 1)).toBeLessThan(1e-17);
		const descalings = Math.ceil(used.length / every) * Math.ceil(perDescale);
		const possible = used.reduce(
			(sum, { first, chance }) => sum + first + chance.length,
			descalings,
		);
		expect(bounds.most).toBeLessThan(possible);
		for (const amount of [0, 200, 500, 1000, 1500]) {
			const chance = chanceOf(wanted, 0, amount + 1);
			if (bounds.isMoreThan(amount)) expect(chance).toBeLessThan(1e-17);
			else expect(chance).toBeGreaterThan(1e-25);
		}
	});
});
