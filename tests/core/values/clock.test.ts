import { describe, expect, test } from "vitest";
import { clock, writeClock } from "../../../src/core/values/clock.ts";
import { dateTime } from "../../../src/core/values/dateTime.ts";

describe("clock", () => {
	test.each([
		["00:00", 0],
		["7:30", 450],
		["07:30", 450],
		[" 23:59 ", 1439],
		["07:30:00", 450],
		["04:30:00 PM", 990],
		["12:05 am", 5],
		["1:00 PM", 780],
		["1:30am", 90],
		["04:30  pm", 990],
		["12:05 p.m.", 725],
		["7h30", 450],
		["15 h 00", 900],
		["15H", 900],
	])("%j is minute %d", (text, minute) => {
		expect(clock().schema.parse(text)).toBe(minute);
	});

	test.each([
		"24:00",
		"12:60",
		"7",
		"7.30",
		"07:3",
		"-1:00",
		"",
		"noon",
		"07:30:60",
		"13:00 PM",
		"0:30 am",
		"07:30:00:00",
		"24h00",
		"7h60",
		"7h3",
		"7h30:00",
		"7h30 pm",
	])("%j is refused", (text) => {
		expect(clock().schema.safeParse(text).success).toBe(false);
	});

	test.each([
		[0, "00:00"],
		[450, "07:30"],
		[1439.6, "00:00"],
		[1440, "00:00"],
		[1500, "01:00"],
		[-60, "23:00"],
	])("minute %d is written %s", (minute, text) => {
		expect(writeClock(minute)).toBe(text);
	});
});

describe("dateTime", () => {
	test.each([
		["2027-03-01 00:00", "2027-03-01", 0],
		["2027-03-01 07:30", "2027-03-01", 450],
		["2027-03-01T07:30", "2027-03-01", 450],
		["  2027-03-01   7:30 ", "2027-03-01", 450],
	])("%j is read", (text, date, minutes) => {
		expect(dateTime().schema.parse(text)).toEqual({ date, minutes });
	});

	test("a day alone stays a day, also when it is written", () => {
		const read = dateTime().schema.parse(" 2027-03-01 ");
		expect(read).toEqual({ date: "2027-03-01", minutes: 0, isDayOnly: true });
		expect(dateTime().write(read)).toBe("2027-03-01");
	});

	test.each([
		"",
		" ",
		"2027-03-01\t07:30",
		"07:30",
		"2027-02-30 07:30",
		"2027-03-01 25:00",
		"2027-03-01 07:30 x",
		"about\n2027-03-01 07:30",
		"about\u00a02027-03-01",
	])("%j is refused", (text) => {
		expect(dateTime().schema.safeParse(text).success).toBe(false);
	});

	test("is written as it is read", () => {
		expect(dateTime().write({ date: "2027-03-01", minutes: 450 })).toBe("2027-03-01 07:30");
	});
});
