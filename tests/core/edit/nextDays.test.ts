import { expect, test } from "vitest";
import { nextDays } from "../../../src/core/edit/nextDays.ts";

const workbook = (...days: readonly string[]) => ({
	tables: {
		"records.csv": {
			header: ["date", "births", "kits_used"],
			rows: days.map((day) => [day, "5", ""]),
		},
	},
});

test.each([
	[
		"the days after the last",
		["2027-02-27", "2027-02-28"],
		["2027-03-01", "2027-03-02", "2027-03-03"],
	],
	[
		"a day left out in the last week first",
		["2027-02-20", "2027-02-26", "2027-02-28", "2027-02-25"],
		["2027-02-22", "2027-02-23", "2027-02-24"],
	],
	[
		"a gap of long ago is left",
		["2027-01-01", ...week("2027-02")],
		["2027-02-08", "2027-02-09", "2027-02-10"],
	],
	["nothing before the first day", ["2027-03-01"], ["2027-03-02", "2027-03-03", "2027-03-04"]],
	["an empty register", [], []],
	["only days that cannot be read", ["soon"], []],
])("%s", (_what, days, expected) => {
	expect(nextDays(workbook(...days), 3)).toEqual(expected);
});

function week(month: string): string[] {
	return Array.from({ length: 7 }, (_, at) => `${month}-0${at + 1}`);
}
