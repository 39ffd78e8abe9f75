import { describe, expect, test } from "vitest";
import { changeOfLevel } from "../../src/core/forecast/changeOfLevel.ts";
import { expectWithin } from "../expectWithin.ts";
import { birthsDraw, poissonDraw } from "./draws.ts";
import { randomNumbers } from "./randomNumbers.ts";

const even = [1, 1, 1, 1, 1, 1, 1];
const CHANGED_ON = 200;

/** Days from a change to the first day on which the register so far tells it. */
function delay(mean: number, times: number, random: () => number): number | undefined {
	const counts = Array.from({ length: 600 }, (_, day) =>
		poissonDraw(day < CHANGED_ON ? mean : times * mean, random),
	);
	for (let days = CHANGED_ON; days <= counts.length; days++) {
		const change = changeOfLevel(counts.slice(0, days), even, 0);
		if (change) return change.toldOn < CHANGED_ON ? undefined : change.toldOn - CHANGED_ON + 1;
	}
	return Number.POSITIVE_INFINITY;
}

const middle = (list: readonly number[]) =>
	[...list].sort((a, b) => a - b)[list.length >> 1] as number;

describe("a rise by four tenths is told after days, in the middle", () => {
	test.each([
		[2, 35, 5],
		[6, 13, 2],
		[15, 7, 1],
	])("%d births a day: %d, give or take %d", (mean, days, error) => {
		const random = randomNumbers(mean);
		const delays = Array.from({ length: 120 }, () => delay(mean, 1.4, random));
		expectWithin(middle(delays.filter((each) => each !== undefined)), days, error, "days");
	});
});

describe("a false alarm within two years", () => {
	test.each([
		[2, 20],
		[6, 36],
		[15, 36],
	])("%d births a day: %d of 100 units", (mean, of100) => {
		const random = randomNumbers(70 + mean);
		const units = 400;
		const alarms = Array.from({ length: units }, () =>
			changeOfLevel(
				Array.from({ length: 730 }, () => poissonDraw(mean, random)),
				even,
				0,
			),
		).filter((change) => change !== undefined).length;
		expectWithin((100 * alarms) / units, of100, 8, "of 100"); // 3 standard errors of 400 units
	});

	test("is no more frequent where days vary more than Poisson and that is known", () => {
		const random = randomNumbers(5);
		const alarms = (daySpread: number) =>
			Array.from({ length: 200 }, () =>
				changeOfLevel(
					Array.from({ length: 365 }, () => birthsDraw(6, 5, random)),
					even,
					daySpread,
				),
			).filter((change) => change !== undefined).length;
		expect(alarms(1 / 5)).toBeLessThan(60);
		expect(alarms(0)).toBeGreaterThan(120);
	});
});

describe("what it says", () => {
	const steady = (mean: number, days: number) => new Array<number>(days).fill(mean);

	test("births before and after, and the day it began", () => {
		expect(changeOfLevel([...steady(4, 60), ...steady(8, 30)], even, 0)).toEqual({
			beganOn: 60,
			toldOn: 66,
			before: 4,
			after: 8,
		});
	});

	test("a fall likewise", () => {
		const change = changeOfLevel([...steady(8, 60), ...steady(3, 30)], even, 0);
		expect([change?.beganOn, change?.before, change?.after]).toEqual([60, 8, 3]);
	});

	test("of two changes the last", () => {
		const change = changeOfLevel([...steady(4, 60), ...steady(8, 40), ...steady(3, 40)], even, 0);
		expect([change?.beganOn, change?.before, change?.after]).toEqual([100, 8, 3]);
	});

	test("weekdays are no change, nor are missing days", () => {
		const factors = [0.2, 1.8];
		const days = Array.from({ length: 90 }, (_, day) => (day % 2 === 0 ? 2 : 18));
		expect(changeOfLevel(days, factors, 0)).toBeUndefined();
		const gaps = [...steady(8, 60), ...new Array<null>(40).fill(null), ...steady(8, 20)];
		expect(changeOfLevel(gaps, even, 0)).toBeUndefined();
	});

	test("a burst of less than a week is none, nor is anything in the first four weeks", () => {
		const burst = [...steady(4, 60), ...steady(12, 2), ...steady(2, 10), ...steady(4, 40)];
		expect(changeOfLevel(burst, even, 0)).toBeUndefined();
		expect(changeOfLevel([...steady(4, 10), ...steady(20, 17)], even, 0)).toBeUndefined();
		expect(changeOfLevel([], even, 0)).toBeUndefined();
	});
});
