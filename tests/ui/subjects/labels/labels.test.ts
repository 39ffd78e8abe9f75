import { describe, expect, test } from "vitest";
import { discardAt, usableHours, useBy } from "../../../../src/ui/subjects/labels/discardAt.ts";
import { sheetsFor } from "../../../../src/ui/subjects/labels/labelSheets.ts";

const at = (date: string, hours: number, minutes = 0) => ({ date, minutes: hours * 60 + minutes });

describe("a mixed solution is poured away", () => {
	test.each([
		["on the next day, at the same hour", at("2027-03-01", 7, 40), 24, at("2027-03-02", 7, 40)],
		["over a leap day", at("2028-02-28", 21), 24, at("2028-02-29", 21)],
		["over the end of a year", at("2027-12-31", 20), 8, at("2028-01-01", 4)],
		["at midnight, which is the next day", at("2027-03-01", 12), 12, at("2027-03-02", 0)],
		["down to the minute for parts of an hour", at("2027-03-01", 7), 0.51, at("2027-03-01", 7, 30)],
		["after 24 hours at most, whatever is set", at("2027-03-01", 7), 72, at("2027-03-02", 7)],
	])("%s", (_, made, hours, expected) => {
		expect(discardAt(made, hours)).toEqual(expected);
	});
	test("a shorter life of the unit stands", () => {
		expect(usableHours(8)).toBe(8);
		expect(usableHours(25)).toBe(24);
	});
});

test.each([
	["2027-02-26", 7, "2027-03-05"],
	["2028-02-26", 7, "2028-03-04"],
	["2027-03-01", 1, "2027-03-02"],
	["2027-03-01", 0.25, "2027-03-01"],
	["2027-03-01", 6.9, "2027-03-07"],
])("a kit done on %s with %f days is used by %s", (done, days, expected) => {
	expect(useBy(done, days)).toBe(expected);
});

test("six labels to a sheet, the last sheet part full", () => {
	expect([0, 1, 6, 7, 12, 13].map(sheetsFor)).toEqual([0, 1, 1, 2, 2, 3]);
});
