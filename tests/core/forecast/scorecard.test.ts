import { describe, expect, test } from "vitest";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { discountedFilter } from "../../../src/core/forecast/discountedFilter.ts";
import { type Forecast, forecast } from "../../../src/core/forecast/forecast.ts";
import { interval, scorecard } from "../../../src/core/forecast/scorecard.ts";
import { factorsOf } from "../../../src/core/forecast/weekdayFactors.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";
import { register, repeated } from "./register.ts";

type Register = ReturnType<typeof register>;
const learn = (days: Register) =>
	answerOf(forecast, {
		register: days,
		factors: factorsOf(days),
		birthsPerDay: null,
		priorDays: 7,
	});
const score = (days: Register, made: Forecast = learn(days)) => scorecard(days, made);
const logPoisson = (count: number, mean: number) => {
	let log = -mean;
	for (let k = 1; k <= count; k++) log += Math.log(mean / k);
	return log;
};

describe("the scorecard", () => {
	const counts = [3, 5, 4, 6, 2, 1, 7, 4, 4, 6, 5, 3, 0, 8, 4, 5, 5, 6, 1];
	const days = register(...counts);

	test("plain mean and last week by hand: the days that all three can forecast", () => {
		const card = score(days);
		const scored = counts.slice(7);
		const meanBefore = (day: number) => counts.slice(0, day).reduce((sum, y) => sum + y, 0) / day;
		const average = (of: (count: number, day: number) => number) =>
			scored.reduce((sum, count, i) => sum + of(count, i + 7), 0) / scored.length;
		expect(card?.days).toBe(12);
		expectWithin(
			card?.plainMean,
			average((y, day) => logPoisson(y, meanBefore(day))),
			1e-9,
			"log",
		);
		expectWithin(
			card?.lastWeek,
			average((y, day) => logPoisson(y, Math.max(0.5, counts[day - 7] as number))),
			1e-9,
			"log",
		);
	});

	test("a day without a count is none of the plain mean's", () => {
		const gap = counts.map((count, day) => (day === 3 ? null : count));
		const seen = (day: number) => gap.slice(0, day).flatMap((y) => (y === null ? [] : [y]));
		const mean = (of: number[]) => of.reduce((sum, y) => sum + y, 0) / of.length;
		const scored = gap.flatMap((y, day) =>
			day < 7 || y === null || gap[day - 7] === null ? [] : [logPoisson(y, mean(seen(day)))],
		);
		const card = score(register(...gap));
		expect(card?.days).toBe(11);
		expectWithin(card?.plainMean, mean(scored), 1e-9, "log");
	});

	test("its own score is the filter's over the same days", () => {
		const made = learn(days);
		const turned = days.counts.slice(0, 7).map((_, i) => made.factors[(1 + i) % 7] as number);
		const upTo = (n: number) => discountedFilter(counts.slice(0, n), turned, made);
		const sum = upTo(counts.length).logLikelihood - upTo(7).logLikelihood;
		expectWithin(score(days)?.logScore, sum / 12, 1e-12, "log");
	});

	test.each<[string, (number | null)[], number | undefined]>([
		[
			"a week's day missing is not scored, nor is the day a week after",
			[...counts.slice(0, 8), null, ...counts.slice(9)],
			10,
		],
		["days before the first birth are not", [0, 0, 0, 0, 0, 0, 0, 0, 0, ...counts], 18],
		[
			"no day has one a week before it",
			repeated([3, null, null, null, null, null, null, null], 14),
			undefined,
		],
	])("%s", (_what, list, number) => {
		expect(score(register(...list))?.days).toBe(number);
	});

	test("the same count every day is inside every interval, and hardly a surprise", () => {
		const card = score(register(...repeated([6], 60)));
		expect([card?.coverage90, card?.coverage50]).toEqual([1, 1]);
		expectWithin(card?.lastWeek, logPoisson(6, 6), 1e-9, "log score");
	});

	test("an interval leaves as much out on either side, and its ends are inside", () => {
		expect(interval(poisson(6), 0.9)).toEqual({ low: 2, high: 10 });
		expect(interval(poisson(6), 0.5)).toEqual({ low: 4, high: 8 });
		const steady = { ...learn(register(...repeated([6], 60))), discount: 1, daySpread: 0 };
		const share = (count: number) => {
			const card = score(register(...repeated([6], 60), count), steady);
			return [card?.coverage90, card?.coverage50].map((of) => Math.round((of ?? 0) * 54) - 53);
		};
		expect([1, 2, 3, 4, 8, 9, 10, 11].map(share)).toEqual([
			[0, 0],
			[1, 0],
			[1, 0],
			[1, 1],
			[1, 1],
			[1, 0],
			[1, 0],
			[0, 0],
		]);
	});

	test("days far outside are told apart from those inside", () => {
		const steady = learn(register(...repeated([6], 60)));
		const list = [...repeated([6], 60), 60, 60, 60];
		const card = score(register(...list), { ...steady, discount: 1 });
		expectWithin(card?.coverage90, 53 / 56, 1e-12, "share of days");
	});
});
