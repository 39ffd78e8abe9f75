import { describe, expect, test } from "vitest";
import { addDays, date, dayNumber, isoDate, weekday } from "../../../src/core/values/date.ts";

describe("dayNumber", () => {
	test.each([
		["1970-01-01", 0],
		["1970-02-01", 31],
		["1969-12-31", -1],
		["2000-02-29", 11_016],
		["2028-02-29", 21_243],
	])("%s is day %d", (text, day) => {
		expect(dayNumber(text)).toBe(day);
		expect(isoDate(day)).toBe(text);
	});

	test.each([
		"2027-02-29",
		"2100-02-29",
		"2027-04-31",
		"2027-13-01",
		"2027-00-01",
		"2027-01-00",
		"2027-1-1",
		"12027-01-01",
		"0099-01-01",
		"2027-01-011",
		"x",
	])("there is no day %s", (text) => {
		expect(dayNumber(text)).toBeUndefined();
	});
});

describe("addDays", () => {
	test.each([
		["2028-02-28", 1, "2028-02-29"],
		["2027-02-28", 1, "2027-03-01"],
		["2027-12-31", 1, "2028-01-01"],
		["2027-03-01", -1, "2027-02-28"],
		["2027-03-28", 7, "2027-04-04"],
		["2027-03-01", 366, "2028-03-01"],
	])("%s and %d days is %s", (from, days, to) => {
		expect(addDays(from, days)).toBe(to);
	});

	test("a text that is no day is our own mistake", () => {
		expect(() => addDays("2027-02-30", 1)).toThrow(/not a date/);
	});
});

describe("weekday", () => {
	test.each([
		["1970-01-01", 4],
		["1969-12-31", 3],
		["2027-03-01", 1],
		["2028-02-29", 2],
		["1900-01-07", 0],
	])("%s is day %d of the week, Sunday being 0", (text, day) => {
		expect(weekday(text)).toBe(day);
	});
});

describe("date", () => {
	test("spreadsheets keep it as a day", () => {
		expect(date()).toMatchObject({ numeric: false, written: "date" });
		expect(date().write("2027-03-01")).toBe("2027-03-01");
	});

	test.each([
		["2027-03-01", "2027-03-01"],
		[" 2028-02-29 ", "2028-02-29"],
		["1900-01-01", "1900-01-01"],
		["2199-12-31", "2199-12-31"],
	])("%j is read as %s", (text, value) => {
		expect(date().schema.parse(text)).toBe(value);
	});

	test.each([
		"",
		"01/03/2027",
		"1.3.2027",
		"2027-02-29",
		"1899-12-31",
		"2200-01-01",
		"20270301",
		"2027-03-01T07:00",
		"2027-03-01/2027-03-02",
		"2027-03-012027-03-01",
	])("%j is refused", (text) => {
		expect(date().schema.safeParse(text).success).toBe(false);
	});
});
