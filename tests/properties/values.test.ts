import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clock, writeClock } from "../../src/core/values/clock.ts";
import { addDays, date, dayNumber, isoDate, weekday } from "../../src/core/values/date.ts";
import { number, readNumber, writeNumber } from "../../src/core/values/number.ts";
import { always, cellText } from "./workbooks.ts";

describe("numbers", () => {
	test("read back as they are written, to six decimals", () => {
		fc.assert(
			fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (x) => {
				const back = readNumber(writeNumber(x));
				expect(back).toBeDefined();
				expect(Math.abs((back as number) - x)).toBeLessThanOrEqual(5.1e-7);
			}),
			always(2000),
		);
	});

	test("a comma reads as a point, unless it could part thousands", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 99_999 }),
				fc.stringMatching(/^\d{1,6}$/),
				(whole, decimals) => {
					const read = readNumber(`${whole},${decimals}`);
					const twoMeanings = decimals.length === 3 && whole >= 1 && whole <= 999;
					expect(read).toBe(twoMeanings ? undefined : Number(`${whole}.${decimals}`));
				},
			),
			always(1000),
		);
	});

	test("any text is a finite number inside the limits, or refused", () => {
		const kind = number({ min: -5, max: 1e6 });
		fc.assert(
			fc.property(cellText, (text) => {
				const read = kind.schema.safeParse(text);
				if (read.success) {
					expect(Number.isFinite(read.data)).toBe(true);
					expect(read.data).toBeGreaterThanOrEqual(-5);
					expect(read.data).toBeLessThanOrEqual(1e6);
				}
			}),
			always(2000),
		);
	});
});

describe("days and times", () => {
	test("days follow each other through every month and leap year", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: -25_567, max: 84_000 }),
				fc.integer({ min: -800, max: 800 }),
				(day, step) => {
					const text = isoDate(day);
					expect(dayNumber(text)).toBe(day);
					expect(dayNumber(addDays(text, step))).toBe(day + step);
					expect(weekday(addDays(text, 7))).toBe(weekday(text));
					expect(weekday(addDays(text, 1))).toBe((weekday(text) + 1) % 7);
				},
			),
			always(2000),
		);
	});

	test("any text is a day of the calendar, or refused", () => {
		fc.assert(
			fc.property(cellText, (text) => {
				const read = date().schema.safeParse(text);
				if (read.success) expect(dayNumber(read.data)).toBeDefined();
			}),
			always(1000),
		);
	});

	test("every minute of the day reads back as it is written", () => {
		for (let minute = 0; minute < 1440; minute++)
			expect(clock().schema.parse(writeClock(minute))).toBe(minute);
	});
});
