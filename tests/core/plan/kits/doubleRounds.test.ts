import { expect, test } from "vitest";
import { doubleRounds } from "../../../../src/core/plan/kits/doubleRounds.ts";
import { roundsOfRecord } from "../../../../src/core/plan/kits/kitRecord.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

/** The line and the kit of each that is in two rounds, and the other round. */
function found(...rounds: string[]) {
	const read = readWorkbook(
		smallUnit({ "rounds-done.csv": ["date,start,ended,kits,descaled", ...rounds].join("\n") }),
	);
	const problems = doubleRounds(roundsOfRecord(read, () => 60));
	return wholeProblems(problems).map(({ code, file, line, column, received, message }) =>
		[code, file, line, column, received, message.match(/round of ([\d :-]+);/)?.[1]].join(" "),
	);
}

const twice = (line: number, kit: string, other: string) =>
	`kit-in-two-rounds rounds-done.csv ${line} kits ${kit} ${other}`;

test.each<[string, string[], string[]]>([
	["one after the other", ["2027-02-20,07:00,09:00,A,no", "2027-02-20,09:00,11:00,A,no"], []],
	[
		"a minute too early",
		["2027-02-20,07:00,09:00,A,no", "2027-02-20,08:59,11:00,A,no"],
		[twice(3, "A", "2027-02-20 07:00")],
	],
	[
		"said at the later one, in whatever order they are written",
		["2027-02-20,08:59,11:00,A B,no", "2027-02-20,07:00,09:00,B A,no"],
		[twice(2, "A", "2027-02-20 07:00"), twice(2, "B", "2027-02-20 07:00")],
	],
	["other kits", ["2027-02-20,07:00,09:00,A,no", "2027-02-20,08:00,11:00,B,no"], []],
	[
		"the same hours of another day",
		["2027-02-20,07:00,09:00,A,no", "2027-02-21,08:00,11:00,A,no"],
		[],
	],
	[
		"over midnight",
		["2027-02-20,23:00,01:00,A,no", "2027-02-21,00:30,02:00,A,no"],
		[twice(3, "A", "2027-02-20 23:00")],
	],
	[
		"the round before the last is over",
		["2027-02-20,07:00,09:00,A,no", "2027-02-20,09:30,10:00,A,no", "2027-02-20,09:45,11:00,A,no"],
		[twice(4, "A", "2027-02-20 09:30")],
	],
])("a kit in rounds: %s", (_, rounds, expected) => {
	expect(found(...rounds)).toEqual(expected);
});
