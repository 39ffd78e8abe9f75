import { describe, expect, test } from "vitest";
import {
	hasTwoMeanings,
	number,
	readNumber,
	writeNumber,
} from "../../../src/core/values/number.ts";

describe("readNumber", () => {
	test.each([
		["0", 0],
		["7", 7],
		[" 7 ", 7],
		["+7", 7],
		["-7", -7],
		["0.5", 0.5],
		["0,5", 0.5],
		[",5", 0.5],
		[".5", 0.5],
		[".25", 0.25],
		["1234,567", 1234.567],
		["1,2345", 1.2345],
		["0".repeat(31).concat("7"), 7],
		["2e-12", 2e-12],
		["5.", 5],
		["0,500", 0.5],
		["12,5", 12.5],
		["12,50", 12.5],
		["1000,500", 1000.5],
		["1 000", 1000],
		["1 000 000", 1_000_000],
		["12 345,6", 12_345.6],
		["1\u00a0000", 1000],
		["1\u202f000", 1000],
		["1\u2009000.25", 1000.25],
		["1e3", 1000],
		["1,5E-2", 0.015],
		["1.5E+12", 1.5e12],
		["10 234,500", 10_234.5],
	])("%j is %d", (text, value) => {
		expect(readNumber(text)).toBe(value);
	});

	test.each([
		["a thousand or one", "1,000"],
		["a thousand or one, signed", "-1,000"],
		["thousands or a decimal", "12,345"],
		["two thousands commas", "1,000,000"],
		["a point and a comma", "1.000,5"],
		["words", "two"],
		["blank", ""],
		["a lone sign", "-"],
		["a lone point", "."],
		["a unit", "5 L"],
		["a percent sign", "5%"],
		["groups that are not of three", "1 00"],
		["a group of four", "10 0000"],
		["a group of four in front", "1234 000"],
		["a group after a point", "1.5 000"],
		["a word before thousands", "x1 000"],
		["hexadecimal", "0x10"],
		["not a number by name", "NaN"],
		["infinity by name", "Infinity"],
		["too large to hold", "1e999"],
		["an exponent of four digits", "1e0001"],
		["a formula", "=1+1"],
		["more digits than 32", "1".repeat(33)],
		["a huge text", "9".repeat(1_000_000)],
		["a huge text of thousands", "1 000".repeat(100_000)],
	])("refuses %s", (_why, text) => {
		expect(readNumber(text)).toBeUndefined();
	});
});

test.each([
	["1,000", true],
	[" -12,345 ", true],
	["0,500", false],
	["1,0005", false],
	["1.000", false],
])("%j has two meanings: %s", (text, two) => {
	expect(hasTwoMeanings(text)).toBe(two);
});

describe("number", () => {
	const kind = number({ min: 0, max: 500 });
	const whole = number({ min: 1, max: 366, whole: true });
	test.each([
		["0", true],
		["500", true],
		["500.0001", false],
		["-0.0001", false],
		["-1", false],
		["1e9", false],
	])("%j lies from 0 to 500: %s", (text, allowed) => {
		expect(kind.schema.safeParse(text).success).toBe(allowed);
	});

	test.each([
		["7", true],
		["7.0", true],
		["7.5", false],
		["0", false],
	])("%j is a whole number from 1 to 366: %s", (text, allowed) => {
		expect(whole.schema.safeParse(text).success).toBe(allowed);
	});

	test("says how spreadsheets write it", () => {
		const of = (as?: "money" | "percent" | "share") =>
			number({ min: 0, max: 1, ...(as && { as }) }).written;
		expect([of(), of("money"), of("percent"), of("share")]).toEqual([
			"number",
			"money",
			"percent",
			"share",
		]);
	});

	test("says what is allowed, to people and to programs", () => {
		expect(whole.allowed).toBe("a whole number from 1 to 366");
		expect(whole.tableSchema).toEqual({
			type: "integer",
			constraints: { minimum: 1, maximum: 366 },
		});
	});
});

describe("writeNumber", () => {
	test.each([
		[0, "0"],
		[-0, "0"],
		[-1e-16, "0"],
		[7, "7"],
		[100, "100"],
		[0.5, "0.5"],
		[2 / 3, "0.666667"],
		[1e-7, "0.0000001"],
		[0.0017163479891929897, "0.00171635"],
		[1e15, "1000000000000000"],
		[-2.25, "-2.25"],
	])("%d is written %j", (value, text) => {
		expect(writeNumber(value)).toBe(text);
	});

	test.each([0, 1, 0.123456, 7.5, 1234.000001, 500])("%d reads back as it was", (value) => {
		expect(readNumber(writeNumber(value))).toBe(value);
	});
});
