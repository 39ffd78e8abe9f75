import { describe, expect, test } from "vitest";
import { dailyCounts, registerSince } from "../../../src/core/forecast/dailyCounts.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { recordsSheet } from "../../../src/core/sheets/records.ts";
import { tableOf } from "../smallUnit.ts";

const read = (...lines: string[]) =>
	readTable(recordsSheet, tableOf(["date,births,kits_used", ...lines].join("\n")));
const counts = (...lines: string[]) =>
	dailyCounts(
		read(...lines).rows.map(({ value }) => value),
		"2027-03-01",
	);

describe("the register day by day", () => {
	test.each<[string, string[], string, (number | null)[]]>([
		["in a row", ["2027-02-01,3,", "2027-02-02,0,"], "2027-02-01", [3, 0]],
		["out of order", ["2027-02-03,5,", "2027-02-01,3,", "2027-02-02,4,"], "2027-02-01", [3, 4, 5]],
		[
			"a gap is missing, not zero",
			["2027-02-01,3,", "2027-02-04,5,"],
			"2027-02-01",
			[3, null, null, 5],
		],
		[
			"so is a blank",
			["2027-02-01,3,", "2027-02-02,,1", "2027-02-03,5,"],
			"2027-02-01",
			[3, null, 5],
		],
		[
			"blanks at the ends are no days",
			["2027-02-01,,", "2027-02-02,4,", "2027-02-03,,"],
			"2027-02-02",
			[4],
		],
		[
			"over the end of a leap year's February",
			["2024-02-28,1,", "2024-03-01,3,"],
			"2024-02-28",
			[1, null, 3],
		],
		[
			"the first day of the plan is not used",
			["2027-02-28,2,", "2027-03-01,9,"],
			"2027-02-28",
			[2],
		],
		[
			"a day listed twice is nobody's",
			["2027-02-01,3,", "2027-02-02,4,", "2027-02-02,5,", "2027-02-03,6,"],
			"2027-02-01",
			[3, null, 6],
		],
	])("%s", (_what, lines, firstDay, days) => {
		expect(counts(...lines)).toEqual({ firstDay, counts: days });
	});

	test("days before the first one wanted are left out; where none is left there is no register", () => {
		const days = [3, 4, 5].map((births, day) => ({ date: `2027-02-0${day + 1}`, births }));
		const since = (from: string) => dailyCounts(days, "2027-03-01", from);
		expect(since("2027-02-02")).toEqual({ firstDay: "2027-02-02", counts: [4, 5] });
		expect(since("2027-02-04")).toBeUndefined();
		const register = { firstDay: "2027-02-01", counts: [3, 4, null, 5] };
		const of = (from: string | null) => registerSince.compute({ register, from });
		expect(of(null)).toEqual(register);
		expect(of("2027-02-02")).toEqual({ firstDay: "2027-02-02", counts: [4, null, 5] });
		expect(of("2027-02-05")).toBeNull();
	});

	test.each([
		["no rows", []],
		["only blanks", ["2027-02-01,,2"]],
		["only days of the plan", ["2027-03-01,2,", "2027-04-01,2,"]],
	])("%s: no register", (_what, lines) => {
		expect(counts(...lines)).toBeUndefined();
	});

	test("of two registers a lifetime apart the later one stands", () => {
		const found = counts("1900-01-01,3,", "2027-02-01,4,");
		expect(found?.counts).toHaveLength(40_001);
		expect(found?.counts.filter((count) => count !== null)).toEqual([4]);
	});
});

describe("what a register refuses", () => {
	test.each([
		["a negative count", "2027-02-01,-1,", "births"],
		["half a birth", "2027-02-01,2.5,", "births"],
		["more than any unit has", "2027-02-01,501,", "births"],
		["a day that is none", "2027-02-30,2,", "date"],
		["no day", ",2,", "date"],
		["words", "2027-02-01,two,", "births"],
	])("%s, with its place", (_what, line, column) => {
		expect(read(line).badRows.flatMap((row) => row.problems)).toMatchObject([
			{ code: "bad-cell", file: "records.csv", line: 2, column },
		]);
	});
});
