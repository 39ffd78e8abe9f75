import quantile from "@stdlib/stats-base-dists-negative-binomial-quantile";
import { dnbinom } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import { chanceAtMost, mean, setAside } from "../../src/core/counts/counts.ts";
import { logChance, negativeBinomial } from "../../src/core/counts/negativeBinomial.ts";
import { bestDiscount } from "../../src/core/forecast/bestDiscount.ts";
import { discountedFilter } from "../../src/core/forecast/discountedFilter.ts";
import { type DailyBirths, openBirths, thinned } from "../backtest/thinnedBirths.ts";
import { expectWithin } from "../expectWithin.ts";
import * as from from "./publications.ts";
import { randomNumbers } from "./randomNumbers.ts";
import { checkCases, type Printed, printed, type ReferenceCase } from "./referenceCase.ts";

const computed = (place: string) => printed(from.recomputed, place, "computed");
const even = [1, 1, 1, 1, 1, 1, 1];

/** Size, mean and number of a negative binomial chance. */
type Exactly = { size: number; mean: number; count: number };
function chances(
	size: number,
	meanCount: number,
	row: readonly number[],
	tolerance: number,
	source: Printed,
): ReferenceCase<Exactly>[] {
	return row.map((expected, count) => ({
		id: `size ${size.toFixed(3)}, mean ${meanCount.toFixed(3)}, exactly ${count}: ${source.mark} ${source.place}`,
		inputs: { size, mean: meanCount, count },
		expected,
		tolerance,
		unit: "chance",
		why: "to the last printed digit",
		source,
	}));
}
const goals = { a: 4.43641, mean: 0.82 };
checkCases(
	"negative binomial chances",
	[
		// The publication itself was not at hand: remembered, and consistent with its own ω and mean.
		...chances(
			goals.a,
			goals.mean,
			[0.471, 0.326, 0.138, 0.046, 0.013],
			5e-4,
			printed(from.harveyFernandes, "goals of England at Hampden Park, ω 0.844", "from memory"),
		),
		...chances(goals.a, goals.mean, [0.4712, 0.3261, 0.1383, 0.0463, 0.0134], 5e-5, computed("N1")),
		...chances(5, 10 * 0.06, [0.567426856], 1e-9, computed("thinned, N11")),
		...chances(
			5,
			10 * 0.06,
			[0.567427, 0.303979, 0.097707, 0.024427],
			5e-7,
			computed("thinned, 2.4"),
		),
		{
			id: "size 3.5, share 0.4, exactly 3",
			inputs: { size: 3.5, mean: (3.5 * 0.6) / 0.4, count: 3 },
			expected: 0.126228004905,
			tolerance: 1e-12,
			unit: "chance",
			why: "scipy, jStat and stdlib agree",
			source: computed("N10"),
		},
		{
			id: "size 2, share 0.2, exactly 10",
			inputs: { size: 2, mean: 8, count: 10 },
			expected: 0.047244640256,
			tolerance: 1e-12,
			unit: "chance",
			why: "scipy, jStat and stdlib agree",
			source: computed("N10"),
		},
	],
	({ size, mean: m, count }) => Math.exp(logChance(count, size, m)),
);

checkCases(
	"more than four goals",
	[
		{
			id: "the tail",
			inputs: goals,
			expected: 0.005,
			tolerance: 5e-4,
			unit: "chance",
			why: "printed to three decimals",
			source: printed(from.harveyFernandes, "goals of England at Hampden Park", "from memory"),
		},
	],
	({ a, mean: m }) => 1 - chanceAtMost(negativeBinomial(a, m), 4),
);

checkCases(
	"totals of days to come after 150 births in 30 days, from a 2, b 1",
	(
		[
			[1, [5, 8, 9, 11]],
			[7, [34, 43, 45, 50]],
			[30, [147, 169, 176, 189]],
		] as const
	).flatMap(([days, row]) =>
		row.map((expected, i) => {
			const level = [0.5, 0.9, 0.95, 0.99][i] as number;
			return {
				id: `${days} days at ${level}`,
				inputs: { days, level },
				expected,
				tolerance: 0,
				unit: "births",
				why: "a whole number; scipy and R agree",
				source: computed("2.6, N8"),
			};
		}),
	),
	({ days, level }) => setAside(negativeBinomial(152, (152 * days) / 31), level),
);

describe("moments of those totals", () => {
	test.each([
		[1, 4.9032, 5.0614],
		[7, 34.3226, 42.0728],
		[30, 147.097, 289.45],
	])("%d days: mean %d, variance %d", (days, m, v) => {
		const counts = negativeBinomial(152, (152 * days) / 31);
		const variance = counts.chance.reduce((sum, p, i) => sum + p * (counts.first + i - m) ** 2, 0);
		expectWithin(mean(counts), m, 5e-4, "births");
		expectWithin(variance, v, 5e-3, "births²");
	});
});

describe("3, 1, 4, 1, 5 under each discount (computed, scipy and R agree)", () => {
	test.each([
		[1.0, 14, 5, -8.63866, 3.36, 0.077887, 6],
		[0.9, 11.8373, 4.0951, -8.714549, 3.674899, 0.077498, 6],
		[0.8, 10.1008, 3.3616, -8.805279, 4.12207, 0.077711, 7],
		[0.5, 6.8125, 1.9375, -9.240007, 7.145682, 0.08932, 9],
	])(
		"ω %d: a %d, b %d, log-likelihood %d, next day's variance %d, P(0) %d, 95 %% %d",
		(discount, a, b, log, variance, none, most) => {
			const found = discountedFilter([3, 1, 4, 1, 5], even, { discount });
			expectWithin(found.a, a, 5e-7, "births");
			expectWithin(found.b, b, 5e-7, "days");
			expectWithin(found.logLikelihood, log, 1e-6, "log");
			const next = discount * found.a;
			const m = found.a / found.b;
			expectWithin(m + m ** 2 / next, variance, 1e-6, "births²");
			expectWithin(Math.exp(logChance(0, next, m)), none, 1e-6, "chance");
			expect(setAside(negativeBinomial(next, m), 0.95)).toBe(most);
		},
	);

	test("b goes to 1 ÷ (1 − ω): 20 days at 0.95 (Handbook of Discrete-Valued Time Series, p. 250)", () => {
		const { b } = discountedFilter(new Array<number>(2000).fill(4), even, { discount: 0.95 });
		expectWithin(b, 20, 1e-9, "days");
	});
});

/**
 * The notes' N13 has ω by maximum likelihood of two registers: girls born in California in
 * 1959, 42 a day, ω 0.93871; births in Wyoming in 1988, 18.5 a day, ω 0.97617. Neither file
 * is here: the first comes without a licence, the second only within a package under the GPL.
 * So the same search is held on open days thinned to such units, over likelihoods that R's
 * negative binomial adds up and a search by thirds.
 */
describe("ω that makes a register likeliest, as in N13", () => {
	test.each([
		["as many as in California", 41.98082, 365, 0],
		["as many as in California, eight years on", 41.98082, 365, 3000],
		["as many as in Wyoming", 18.491803, 366, 0],
		["as many as in Wyoming, eight years on", 18.491803, 366, 3000],
	])("%s", (_what, perDay, days, from) => {
		const { births } = openBirths[0] as DailyBirths;
		const register = thinned(births, perDay, randomNumbers(13)).slice(from, from + days);
		const likelihood = (discount: number) => {
			let [a, b, log] = [0, 0, 0];
			for (const count of register) {
				[a, b] = [a * discount, b * discount];
				if (a > 0) log += Math.log(Number(dnbinom(count, a, b / (1 + b))));
				[a, b] = [a + count, b + 1];
			}
			return log;
		};
		let [low, high] = [0.8, 1];
		while (high - low > 1e-6) {
			const third = (high - low) / 3;
			if (likelihood(low + third) < likelihood(high - third)) low += third;
			else high -= third;
		}
		const found = bestDiscount(register, even);
		expectWithin(found, low, 1e-4, "ω");
		const { logLikelihood } = discountedFilter(register, even, { discount: found });
		expectWithin(logLikelihood, likelihood(low), 1e-4, "log");
	});
});

const sizes = [0.3, 0.82, 1, 2.5, 4.436, 12, 60, 152, 900];
const means = [0.05, 0.6, 2, 5.5, 18, 60, 300];
const levels = [0.05, 0.25, 0.5, 0.75, 0.9, 0.95, 0.975, 0.99, 0.999];
describe("agrees with two independent libraries", () => {
	test.each(sizes)("size %d: every quantile", (size) => {
		for (const m of means) {
			const counts = negativeBinomial(size, m);
			const ours = levels.map((level) => setAside(counts, level));
			expect(ours, `mean ${m}`).toEqual(
				levels.map((p) => quantile(p, size, size / (size + m)) + 0),
			);
		}
	});

	// The library's own cumulative chances are off by up to 7e-5; its single chances, added up, are not.
	test.each(sizes)("size %d: chances and their sums", (size) => {
		for (const m of means) {
			const counts = negativeBinomial(size, m);
			let atMost = 0;
			for (let count = 0; count <= m + 40; count++) {
				const exact = Number(dnbinom(count, size, size / (size + m)));
				atMost += exact;
				expectWithin(Math.exp(logChance(count, size, m)), exact, 1e-12, "chance");
				expectWithin(chanceAtMost(counts, count), atMost, 1e-11, "chance");
			}
		}
	});
});
