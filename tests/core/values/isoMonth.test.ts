import { expect, test } from "vitest";
import {
	daysOfMonth,
	endOfMonth,
	monthBefore,
	monthOf,
} from "../../../src/core/values/isoMonth.ts";

test.each([
	["2027-02", 28],
	["2028-02", 29],
	["1900-01", 31],
	["2199-12", 31],
	["1899-12", 0],
	["2200-01", 0],
	["2027-13", 0],
	["2027-00", 0],
	["2027-3", 0],
	["12027-03", 0],
	["19027-03", 0],
	["2027-03-01", 0],
	["March", 0],
])("%s has %d days", (month, count) => {
	const days = daysOfMonth(month);
	expect(days).toHaveLength(count);
	expect(days[0]).toBe(count === 0 ? undefined : `${month}-01`);
	expect(days.at(-1)).toBe(count === 0 ? undefined : `${month}-${count}`);
});

test.each([
	["2027-01", "2026-12"],
	["2027-03", "2027-02"],
])("before %s comes %s", (month, before) => {
	expect(monthBefore(month)).toBe(before);
});

test.each(["2027-02-30", "2027-13-01", "2027-03", ""])("no month has a day %j", (day) => {
	expect(() => monthOf(day)).toThrow(`not a date: ${day}`);
	expect(() => endOfMonth(day)).toThrow(`not a date: ${day}`);
});

test("the end of the month that a day lies in", () => {
	expect([endOfMonth("2028-02-03"), endOfMonth("2027-12-31")]).toEqual([
		"2028-02-29",
		"2027-12-31",
	]);
});
