import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { setAside } from "../../src/core/counts/counts.ts";
import { poisson } from "../../src/core/counts/poisson.ts";
import { sumOf } from "../../src/core/counts/sumOf.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { numberIn, rowsOf, totalOf } from "../core/planCells.ts";
import { unitWith } from "../core/smallUnit.ts";
import { expectWithin } from "../expectWithin.ts";
import { always } from "./workbooks.ts";

describe("the week's set-aside is not the sum of the days'", () => {
	test.each([
		[0.04, 0, 1],
		[3, 6, 29],
	])("seven days of mean %d set aside %d each, the week %d", (births, day, week) => {
		const made = plan(unitWith({ births_per_day: births }));
		expect(rowsOf(made, "day-plan.csv").map((row) => numberIn(row, "births_set_aside"))).toEqual(
			Array(7).fill(day),
		);
		expect(numberIn(totalOf(made, "births"), "set_aside")).toBe(week);
	});
});

const days = fc.array(
	fc.double({ min: 0, max: 40, noNaN: true }).map((x) => Number(x.toFixed(3))),
	{ minLength: 7, maxLength: 7 },
);
const level = fc.constantFrom(0.5, 0.8, 0.9, 0.95, 0.99, 0.999);
const week = (
	births: readonly number[],
	confidence: number,
	settings: Record<string, string | number> = {},
) =>
	plan(
		unitWith(
			{ plan_confidence: confidence, ...settings },
			{
				"births.csv": ["date,births,note", ...births.map((b, i) => `2027-03-0${i + 1},${b},`)].join(
					"\n",
				),
			},
		),
	);

/** Chance of each number of rounds that run, one round after another. */
function roundsRunning(means: readonly number[]): number[] {
	let chances = [1];
	for (const m of means) {
		const idle = Math.exp(-m);
		const before = chances;
		chances = Array.from(
			{ length: before.length + 1 },
			(_, n) => (before[n] ?? 0) * idle + (before[n - 1] ?? 0) * (1 - idle),
		);
	}
	return chances;
}

function quantile(chances: readonly number[], wanted: number): number {
	let sum = 0;
	return chances.findIndex((p) => {
		sum += p;
		return sum >= wanted - 1e-12;
	});
}

describe("the week's set-aside is the quantile of its days added up exactly", () => {
	test("for births and kits used", () => {
		fc.assert(
			fc.property(days, level, (births, confidence) => {
				const made = week(births, confidence);
				const used = births.map((b) => b / 10);
				expect(numberIn(totalOf(made, "births"), "set_aside")).toBe(
					setAside(sumOf(births.map(poisson)), confidence),
				);
				expect(numberIn(totalOf(made, "kits_used"), "set_aside")).toBe(
					setAside(sumOf(used.map(poisson)), confidence),
				);
			}),
			always(60),
		);
	}, 60_000);

	test("for rounds that run", () => {
		fc.assert(
			fc.property(days, level, (births, confidence) => {
				const made = week(births, confidence);
				const perDay = rowsOf(made, "day-plan.csv").map(
					(row) => numberIn(row, "kits_to_reprocess_expected") as number,
				);
				// Rounds at 7, 14 and 21 h: seven and seven hours of the day, ten over midnight.
				const means = perDay.flatMap((today, i) => [
					((perDay[i - 1] ?? today) * 3 + today * 7) / 24,
					(today * 7) / 24,
					(today * 7) / 24,
				]);
				const chances = roundsRunning(means);
				const expected = chances.reduce((sum, p, n) => sum + p * n, 0);
				expectWithin(numberIn(totalOf(made, "rounds"), "expected"), expected, 1e-9, "rounds");
				expect(numberIn(totalOf(made, "rounds"), "set_aside")).toBe(quantile(chances, confidence));
			}),
			always(60),
		);
	}, 60_000);
});

describe("expected amounts of the days add up to the week's", () => {
	test("for everything", () => {
		fc.assert(
			fc.property(days, fc.constantFrom("in_rounds", "after_each_use"), (births, reprocessing) => {
				const made = week(births, 0.95, { reprocessing });
				const sum = (column: string) =>
					rowsOf(made, "day-plan.csv").reduce(
						(all, row) => all + (numberIn(row, column) ?? Number.NaN),
						0,
					);
				for (const measure of [
					"births",
					"kits_used",
					"kits_expired",
					"kits_to_reprocess",
					"rounds",
					"solution_litres",
					"boiled_litres",
					"vinegar_litres",
					"gauze_pieces",
				] as const) {
					const all = sum(`${measure}_expected`);
					expectWithin(
						numberIn(totalOf(made, measure), "expected"),
						all,
						1e-9 * (1 + all),
						measure,
					);
				}
			}),
			always(40),
		);
	}, 60_000);
});
