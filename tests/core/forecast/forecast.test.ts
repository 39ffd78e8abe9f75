import { describe, expect, test } from "vitest";
import { bestDiscount } from "../../../src/core/forecast/bestDiscount.ts";
import { discountedFilter } from "../../../src/core/forecast/discountedFilter.ts";
import {
	dayAhead,
	FEWEST_BIRTHS,
	FEWEST_DAYS,
	type Forecast,
	forecast,
} from "../../../src/core/forecast/forecast.ts";
import { factorsOf } from "../../../src/core/forecast/weekdayFactors.ts";
import { addDays, weekday } from "../../../src/core/values/date.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { register, repeated } from "./register.ts";

type Register = ReturnType<typeof register>;
const inputs = (days: Register, birthsPerDay: number | null) => ({
	register: days,
	factors: factorsOf(days),
	birthsPerDay,
	priorDays: 7,
});
const learn = (days: Register, birthsPerDay: number | null = 6) =>
	answerOf(forecast, inputs(days, birthsPerDay));
const refused = (days: Register, birthsPerDay: number | null) =>
	refusalOf(forecast, inputs(days, birthsPerDay)).map((p) => p.code);
const busyMondays = repeated([12, 6, 6, 6, 6, 3, 3], 30);

describe("what makes a forecast", () => {
	test("fourteen recorded days do", () => {
		expect(learn(register(...repeated([3, 5], FEWEST_DAYS / 2))).recordedDays).toBe(14);
		expect(FEWEST_DAYS).toBe(14);
	});

	test.each<[string, (number | null)[]]>([
		["thirteen do not", repeated([4], 13)],
		["nor thirteen among missing days", repeated([4, null], 13)],
		["nor nine births, however many days", [...repeated([0], 200), 9]],
		["nor days without any birth", repeated([0], 200)],
	])("%s: births a day lead, and the register moves them", (_what, counts) => {
		const made = learn(register(...counts));
		const recorded = counts.filter((count) => count !== null);
		const births = recorded.reduce((sum, count) => sum + count, 0);
		expect([made.ledBy, made.discount, made.daySpread, made.a]).toEqual([
			"settings",
			1,
			0,
			42 + births,
		]);
		expectWithin(made.b, 7 + recorded.length, 2, "days"); // weekdays are not all recorded as often
	});

	test("ten births do", () => {
		expect(learn(register(...repeated([0], 200), 10)).ledBy).toBe("register");
		expect(FEWEST_BIRTHS).toBe(10);
	});

	test("with nothing to start from a young register is refused", () => {
		expect(refused(register(...repeated([4], 13)), null)).toEqual(["short-register"]);
		expect(refused(register(...repeated([0], 30)), 0)).toEqual(["short-register"]);
		const [problem] = refusalOf(forecast, inputs(register(4), null));
		expect(problem).toMatchObject({ file: "records.csv", column: "births" });
		expect(learn(register(1, 0, 2), 3).ledBy).toBe("settings");
		expect(learn(register(...repeated([4], 14)), null).ledBy).toBe("register");
	});

	test.each<[string, (number | null)[]]>([
		["leading zeros", [...repeated([0], 40), 3, 2, 4]],
		["a single birth", [...repeated([0], 30), 1]],
		["births that stopped", [5, 6, 4, ...repeated([0], 30)]],
		["gaps of ten days", repeated([4, 5, ...repeated([null], 10)], 8)],
		["one huge day", [...repeated([4], 30), 500, ...repeated([4], 30)]],
		["the most that a register takes", repeated([500], 60)],
	])("%s: every figure sound", (_what, counts) => {
		const made = learn(register(...counts));
		expect(made.a).toBeGreaterThan(0);
		expect(made.b).toBeGreaterThan(0);
		expect(made.discount).toBeGreaterThanOrEqual(0.8);
		expect(made.discount).toBeLessThanOrEqual(1);
		expect(Number.isFinite(made.logLikelihood)).toBe(true);
		const { mean, levelShape } = dayAhead(made, addDays(made.lastDay, 1));
		for (const figure of [mean, levelShape])
			expect(Number.isFinite(figure) && figure > 0).toBe(true);
	});
});

describe("the forecast is the filter's, from its own weekday on", () => {
	test.each([0, 1, 2, 3, 4, 5, 6])("a register that begins %d days into the week", (into) => {
		const days = { firstDay: addDays("2027-01-03", into), counts: busyMondays };
		const factors = factorsOf(days);
		const turned = days.counts
			.slice(0, 7)
			.map((_, i) => factors[(weekday(days.firstDay) + i) % 7] as number);
		const made = learn(days);
		const best = bestDiscount(days.counts, turned);
		expect(made).toMatchObject({
			ledBy: "register",
			daySpread: 0,
			discount: best,
			...discountedFilter(days.counts, turned, { discount: best }),
		});
		expect(made.lastDay).toBe(addDays(days.firstDay, 209));
	});

	test("a register from before 1970, or with a day of a wrong century, is read like any other", () => {
		const late = learn({ firstDay: "2027-01-04", counts: busyMondays });
		expect(learn({ firstDay: "1927-01-03", counts: busyMondays })).toEqual({
			...late,
			lastDay: "1927-07-31",
		});
	});
});

test("each register has its own discount, whatever register was read before", () => {
	const discountOf = (...counts: number[]) => learn(register(...counts)).discount;
	expect(discountOf(...repeated([4], 60))).toBe(1);
	expect(discountOf(...repeated([4], 30), ...repeated([9], 30))).toBeLessThan(0.99);
	expect(discountOf(...repeated([4], 60))).toBe(1);
});

describe("days ahead", () => {
	const factors = [0.8, 1.4, 1, 1, 1, 1, 0.8];
	const made: Forecast = {
		ledBy: "register",
		daySpread: 0.25,
		discount: 0.9,
		a: 40,
		b: 10,
		lastDay: "2027-02-28",
		factors,
		logLikelihood: 0,
		recordedDays: 100,
	};
	test.each([
		["2027-03-01", 1.4 * 4, 36],
		["2027-03-02", 4, 40 * 0.81],
		["2027-03-06", 0.8 * 4, 40 * 0.9 ** 6],
		["2027-03-07", 0.8 * 4, 40 * 0.9 ** 7],
		["2027-03-08", 1.4 * 4, 40 * 0.9 ** 8],
	])("%s: mean %d, shape %d", (date, mean, size) => {
		const found = dayAhead(made, date);
		expectWithin(found.mean, mean, 1e-12, "births");
		expectWithin(found.levelShape, size, 1e-12, "shape");
		expect(found.daySpread).toBe(0.25);
	});

	test("the level stays however far ahead", () => {
		for (const weeks of [1, 4, 52])
			expectWithin(dayAhead(made, addDays("2027-03-01", 7 * weeks)).mean, 5.6, 1e-12, "births");
	});

	test("no day is known better than the next one", () => {
		expectWithin(dayAhead(made, "2027-02-01").levelShape, 36, 1e-12, "shape");
	});

	test("from 28 days ahead on the level is not known less still, and never less than makes a geometric count", () => {
		for (const days of [28, 60, 1000])
			expectWithin(
				dayAhead(made, addDays(made.lastDay, days)).levelShape,
				40 * 0.9 ** 28,
				1e-12,
				"shape",
			);
		const few = { ...made, a: 5 };
		expect(dayAhead(few, addDays(made.lastDay, 60)).levelShape).toBe(1);
	});

	test("days alike are one object, so that a year of them is worked out once", () => {
		const monday = dayAhead(made, "2027-06-07");
		expect(dayAhead(made, "2027-06-14")).toBe(monday);
		expect(dayAhead(made, "2027-06-15")).not.toBe(monday);
	});

	test("without discounting every day is known alike", () => {
		const steady = { ...made, discount: 1 };
		expect(dayAhead(steady, "2027-12-31").levelShape).toBe(40);
	});
});
