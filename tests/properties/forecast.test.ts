import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { discountedFilter } from "../../src/core/forecast/discountedFilter.ts";
import {
	dayAhead,
	FEWEST_BIRTHS,
	FEWEST_DAYS,
	forecast,
} from "../../src/core/forecast/forecast.ts";
import { scorecard } from "../../src/core/forecast/scorecard.ts";
import { factorsOf } from "../../src/core/forecast/weekdayFactors.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { addDays } from "../../src/core/values/date.ts";
import { outcomeOf } from "../core/answerOf.ts";
import { recordsOf } from "../core/forecast/register.ts";
import { rowsOf } from "../core/planCells.ts";
import { unitWith } from "../core/smallUnit.ts";
import { expectWithin } from "../expectWithin.ts";
import { always, cellText } from "./workbooks.ts";

const whole = (min: number, max: number) => fc.integer({ min, max });
const count = fc.oneof(
	{ weight: 6, arbitrary: whole(0, 12) },
	{ weight: 1, arbitrary: fc.constant(0) },
	{ weight: 1, arbitrary: fc.constant(null) },
	{ weight: 1, arbitrary: whole(0, 500) },
);
const firstDay = whole(-20_000, 40_000).map((days) => addDays("1970-01-01", days));
const register = fc.record({ firstDay, counts: fc.array(count, { minLength: 1, maxLength: 120 }) });
/** Long enough for a forecast, most of the time. */
const months = fc.record({ firstDay, counts: fc.array(count, { minLength: 40, maxLength: 160 }) });
const discount = fc.double({ min: 0.8, max: 1, noNaN: true });
const even = [1, 1, 1, 1, 1, 1, 1];

describe("whatever the register", () => {
	test("weekday factors have mean 1 and none is below nought", () => {
		fc.assert(
			fc.property(register, (days) => {
				const factors = factorsOf(days);
				expectWithin(
					factors.reduce((sum, factor) => sum + factor, 0),
					7,
					1e-9,
					"times",
				);
				expect(Math.min(...factors)).toBeGreaterThanOrEqual(0);
			}),
			always(500),
		);
	});

	test("a forecast is sound, or there are too few days or births", () => {
		fc.assert(
			fc.property(fc.oneof(months, register), whole(1, 14), (days, ahead) => {
				const made = outcomeOf(forecast, {
					register: days,
					factors: factorsOf(days),
					birthsPerDay: null,
					priorDays: 7,
				});
				const recorded = days.counts.filter((each) => each !== null);
				if (!made.ok) {
					const births = recorded.reduce((sum, each) => sum + each, 0);
					const few = recorded.length < FEWEST_DAYS || births < FEWEST_BIRTHS;
					expect(few).toBe(true);
					return;
				}
				expect(made.value.discount >= 0.8 && made.value.discount <= 1).toBe(true);
				expect(Number.isFinite(made.value.logLikelihood)).toBe(true);
				const { mean, levelShape } = dayAhead(made.value, addDays(made.value.lastDay, ahead));
				expect(Number.isFinite(mean) && mean >= 0).toBe(true);
				expect(Number.isFinite(levelShape) && levelShape > 0).toBe(true);
				const card = scorecard(days, made.value);
				for (const figure of Object.values(card ?? {})) expect(Number.isFinite(figure)).toBe(true);
			}),
			always(150),
		);
	}, 60_000);

	test("no other discount would have forecast its days better", () => {
		let compared = 0;
		fc.assert(
			fc.property(months, discount, (days, other) => {
				const factors = factorsOf(days);
				const made = outcomeOf(forecast, {
					register: days,
					factors,
					birthsPerDay: null,
					priorDays: 7,
				});
				if (!made.ok) return;
				compared++;
				const first = new Date(`${days.firstDay}T00:00Z`).getUTCDay();
				const turned = factors.map((_, i) => factors[(first + i) % 7] as number);
				const likelihood = discountedFilter(days.counts, turned, { discount: other }).logLikelihood;
				expect(made.value.logLikelihood).toBeGreaterThanOrEqual(likelihood - 0.05);
			}),
			always(200),
		);
		expect(compared).toBeGreaterThan(150);
	}, 60_000);
});

describe("the level", () => {
	test("lies between the fewest and the most births of a day", () => {
		fc.assert(
			fc.property(
				fc.array(whole(0, 500), { minLength: 1, maxLength: 100 }),
				discount,
				(counts, omega) => {
					const { a, b } = discountedFilter(counts, even, { discount: omega });
					expect(a / b).toBeGreaterThanOrEqual(Math.min(...counts) - 1e-9);
					expect(a / b).toBeLessThanOrEqual(Math.max(...counts) + 1e-9);
				},
			),
			always(500),
		);
	});

	test("is not moved by days that are missing at the end", () => {
		fc.assert(
			fc.property(register, discount, whole(1, 30), (days, omega, missing) => {
				const before = discountedFilter(days.counts, even, { discount: omega });
				if (before.a === 0) return;
				const longer = [...days.counts, ...new Array<null>(missing).fill(null)];
				const after = discountedFilter(longer, even, { discount: omega });
				expectWithin(after.a / after.b / (before.a / before.b), 1, 1e-9, "times");
				expectWithin(after.a / before.a, omega ** missing, 1e-9, "times");
				expect(after.logLikelihood).toBe(before.logLikelihood);
			}),
			always(300),
		);
	});

	test("one more birth on any day never lowers it", () => {
		fc.assert(
			fc.property(
				fc.array(whole(0, 40), { minLength: 1, maxLength: 60 }),
				whole(0, 59),
				discount,
				(counts, at, omega) => {
					const day = at % counts.length;
					const more = counts.with(day, (counts[day] as number) + 1);
					const level = (list: number[]) => discountedFilter(list, even, { discount: omega }).a;
					expect(level(more)).toBeGreaterThan(level(counts));
				},
			),
			always(300),
		);
	});
});

test("whatever is typed into the register, a plan comes of it, and every figure is sound", () => {
	const counts = fc.array(
		fc.oneof(
			{ weight: 5, arbitrary: whole(0, 12).map(String) },
			{ weight: 1, arbitrary: cellText },
		),
		{
			minLength: 1,
			maxLength: 60,
		},
	);
	fc.assert(
		fc.property(counts, (cells) => {
			const text = recordsOf(addDays("2027-03-01", -cells.length), new Array(cells.length).fill(0));
			const workbook = unitWith({}, { "records.csv": text });
			const table = workbook.tables["records.csv"];
			const rows = (table?.rows ?? []).map(([date = ""], i) => [date, cells[i] ?? "", ""]);
			const made = plan({
				tables: { ...workbook.tables, "records.csv": { header: table?.header ?? [], rows } },
			});
			expect(made.made).toBe(true);
			for (const file of ["day-plan.csv", "forecast.csv", "scorecard.csv"])
				for (const row of rowsOf(made, file))
					for (const { outcome } of Object.values(row)) {
						expect(outcome.ok).toBe(true);
						if (outcome.ok && typeof outcome.value === "number")
							expect(Number.isFinite(outcome.value) && outcome.value >= 0).toBe(true);
					}
		}),
		always(60),
	);
}, 60_000);
