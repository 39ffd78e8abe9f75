import { beforeAll, describe, expect, test } from "vitest";
import { momentsOf } from "../../src/core/counts/moments.ts";
import { type DailyCounts, dailyCounts } from "../../src/core/forecast/dailyCounts.ts";
import { discountedFilter } from "../../src/core/forecast/discountedFilter.ts";
import { factorsOf } from "../../src/core/forecast/weekdayFactors.ts";
import { addDays, weekday } from "../../src/core/values/date.ts";
import { backtest, type Result } from "../backtest/backtest.ts";
import { type DailyBirths, openBirths, thinned } from "../backtest/thinnedBirths.ts";
import { expectWithin } from "../expectWithin.ts";
import * as from from "./publications.ts";
import { randomNumbers } from "./randomNumbers.ts";
import { checkCases, printed } from "./referenceCase.ts";

const seen = printed(from.openDailyBirths, "statistics computed from the files", "seen");
const sum = (list: readonly number[]) => list.reduce((all, count) => all + count, 0);
const mean = (list: readonly number[]) => sum(list) / list.length;
const named = (name: string) => openBirths.find((data) => data.name === name) as DailyBirths;

/** Countries' days as the program reads a register: rows in any order, here the last first. */
const registers = new Map(
	openBirths.map(({ name, births, firstDay }) => {
		const rows = births.map((count, day) => ({ date: addDays(firstDay, day), births: count }));
		const counts = dailyCounts(rows.reverse(), addDays(firstDay, births.length));
		return [name, counts as DailyCounts] as const;
	}),
);
/** How often each number of births came, as the program has a count's chances. */
function sharesOf(counts: readonly number[]) {
	const first = Math.min(...counts);
	const chance = new Float64Array(Math.max(...counts) - first + 1);
	for (const count of counts) chance[count - first] = (chance[count - first] ?? 0) + 1;
	return { first, chance: chance.map((times) => times / counts.length) };
}

checkCases(
	"open daily births, as the program reads a register, learns its level and takes moments",
	(
		[
			["1969-1988", 7305, 70_485_508, 9648.940178, 131.7077],
			["1994-2003", 3652, 39_722_137, 10_876.81736, 317.5809],
			["2000-2014", 5479, 62_187_024, 11_350.068261, 476.6001],
		] as const
	).flatMap(([name, days, total, perDay, spread]) =>
		(
			[
				["days", days, 0, "days"],
				["births", total, 0, "births"],
				["mean", perDay, 1e-6, "births a day"],
				["variance ÷ mean", spread, 1e-4, "times"],
			] as const
		).map(([what, expected, tolerance, unit]) => ({
			id: `${name}, ${what}`,
			inputs: { name, what },
			expected,
			tolerance,
			unit,
			why: "to the last noted digit",
			source: seen,
		})),
	),
	({ name, what }) => {
		const { counts } = registers.get(name) as DailyCounts;
		if (what === "days") return counts.length;
		// With nothing forgotten the level is all births over all days.
		const level = discountedFilter(counts, [1], { discount: 1 });
		if (what === "births") return level.a;
		if (what === "mean") return level.a / level.b;
		const moments = momentsOf(sharesOf(counts.filter((count) => count !== null)));
		// The statistic divides by one day fewer.
		return ((moments.variance / moments.mean) * counts.length) / (counts.length - 1);
	},
);

/** Means of Monday to Sunday. */
const weekdays: readonly (readonly [string, readonly number[]])[] = [
	["1969-1988", [9944.1946, 10_367.976, 10_089.4502, 9995.0249, 10_146.772, 8708.3372, 8290.4966]],
	[
		"1994-2003",
		[11_090.3563, 12_349.0345, 12_112.749, 12_069.9213, 11_964.7927, 8739.6762, 7815.5613],
	],
	[
		"2000-2014",
		[11_897.8301, 13_122.4444, 12_910.7663, 12_845.8261, 12_596.1624, 8562.5734, 7518.3768],
	],
];

describe("weekday factors of whole countries", () => {
	test.each(weekdays)("%s: the published weekday means, drawn towards 1", (name, published) => {
		const { births, firstDay } = named(name);
		const factors = factorsOf({ firstDay, counts: births });
		const drawn = published.map((perDay, i) => {
			const day = (i + 1) % 7;
			const n = births.filter((_, at) => (weekday(firstDay) + at) % 7 === day).length;
			return 1 + (perDay / mean(births) - 1) * (n / (n + 8));
		});
		drawn.forEach((factor, i) => {
			expectWithin(factors[(i + 1) % 7], factor / mean(drawn), 1e-7, "times a mean day");
		});
	});
});

describe("thinning to a unit", () => {
	test.each([1, 5, 20])(
		"leaves %d births a day, as spread as the country's days make them",
		(perDay) => {
			const { births } = named("1969-1988");
			const unit = thinned(births, perDay, randomNumbers(7));
			const share = perDay / mean(births);
			const spread = sum(births.map((count) => (count * share - perDay) ** 2)) / births.length;
			const variance = perDay * (1 - share) + spread;
			const middle = mean(unit);
			expectWithin(middle, perDay, 4 * Math.sqrt(variance / births.length), "births");
			const found = sum(unit.map((count) => (count - middle) ** 2)) / unit.length;
			// The spread of a variance is about its size times the root of 2/n.
			expectWithin(found / variance, 1, 4 * Math.sqrt((2 + 1 / perDay) / unit.length), "times");
		},
	);
});

/** A seeded part of tests/backtest/run.ts: registers of a year, the weeks after them. */
describe.each([1, 2, 5, 10, 20])("a week ahead for units of %d births a day", (perDay) => {
	let results: Result[];
	beforeAll(() => {
		results = openBirths.map(({ births, firstDay }, i) => {
			const random = randomNumbers(500 + 10 * perDay + i);
			return backtest(thinned(births, perDay, random), firstDay, 365, 60, random);
		});
	});
	const pooled = (of: (result: Result) => number) => mean(results.map(of));
	const error = (of: (result: Result) => number) =>
		Math.sqrt(sum(results.map((result) => of(result) ** 2))) / results.length;

	test("nine of ten days fall inside, each placed at random within its own step", () => {
		const coverage = pooled((result) => result.placedCoverage);
		expect(coverage).toBeGreaterThanOrEqual(0.86);
		expect(coverage).toBeLessThanOrEqual(0.94);
	});

	test("the range shown holds no fewer; more than that only where births are few", () => {
		const shown = pooled((result) => result.coverage);
		expect(shown).toBeGreaterThanOrEqual(pooled((result) => result.placedCoverage));
		expect(shown).toBeLessThanOrEqual(perDay < 10 ? 0.99 : 0.94);
	});

	test("a plain mean does not do better, beyond what chance explains", () => {
		const over = pooled((result) => result.overPlainMean);
		expect(over).toBeGreaterThan(-2 * error((result) => result.overPlainMeanError));
		if (perDay >= 5) expect(over).toBeGreaterThan(0);
	});

	test("it does better than the same weekday last week", () => {
		expect(pooled((result) => result.overLastWeek)).toBeGreaterThan(0.1);
	});
});
