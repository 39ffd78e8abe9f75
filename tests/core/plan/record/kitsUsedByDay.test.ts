import { describe, expect, test } from "vitest";
import { registerFigures } from "../../../../src/core/plan/births/registerFigures.ts";
import { kitsUsedByDay, usesAreKept } from "../../../../src/core/plan/record/kitsUsedByDay.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const files = {
	"records.csv": `date,births,kits_used
		2027-02-01,5,
		2027-02-10,8,3
		2027-02-11,6,
		2027-02-12,7,
		2027-02-13,4,
		2027-02-22,9,`,
	"uses.csv": `at,kit,what,by,note
		2027-02-10 10:00,A,used,,
		2027-02-11 03:10,A,used,,
		2027-02-11 14:00,B,used,,
		2027-02-11 15:00,C,opened,,
		2027-02-12 23:50,,none_ready,,
		2027-02-14 01:00,A,used,,`,
};

const usedOn = (changes: Record<string, string>) =>
	Object.fromEntries(
		[...kitsUsedByDay(readWorkbook(smallUnit(changes)).tables)].map(([day, parts]) => [
			day,
			parts.length,
		]),
	);

function learnedFrom(changes: Record<string, string>, firstDay = "2027-03-01") {
	const { origin } = registerFigures(readWorkbook(smallUnit(changes)), firstDay).kitShare;
	if (origin.kind !== "computed") throw new Error("not computed");
	return ["births", "uses"].map((key) => {
		const outcome = origin.inputs[key]?.outcome;
		return outcome?.ok ? outcome.value : undefined;
	});
}

describe("kits used a day", () => {
	test("are the register's own number, and where it is blank the uses written down", () => {
		expect(usedOn(files)).toEqual({
			"2027-02-10": 1,
			"2027-02-11": 3,
			"2027-02-12": 0,
			"2027-02-14": 1,
		});
	});

	// methods.md 4: a kit opened at every birth is 100 per 100.
	test("opened at every birth are as many as used at every birth", () => {
		const learned = (what: string) =>
			learnedFrom({
				"records.csv": "date,births\n2027-02-11,2",
				"uses.csv": `at,kit,what\n2027-02-11 10:00,A,${what}\n2027-02-11 11:00,B,${what}`,
			});
		expect(learned("opened")).toEqual([2, 2]);
		expect(learned("used")).toEqual([2, 2]);
		expect(learned("none_ready")).toEqual([2, 0]);
	});

	test("the share learned counts a day without a line where uses are kept, and no other", () => {
		// 10 to 13 February: 8 + 6 + 7 + 4 births; 3 by the register, 3 by the lines, 0, 0. The 1st and the 22nd lie outside.
		expect(learnedFrom(files)).toEqual([25, 6]);
		expect(learnedFrom(files, "2027-02-12")).toEqual([14, 6]);
		expect(learnedFrom({ "records.csv": files["records.csv"] })).toEqual([8, 3]);
	});

	test.each([
		["2027-01-31", false],
		["2027-02-08", true],
		["2027-02-09", false],
		["2027-02-10", true],
		["2027-02-17", true],
		["2027-02-18", false],
		["2027-02-25", true],
		["2027-02-26", false],
	] as const)("uses are kept around %s: %s", (day, kept) => {
		const { tables } = readWorkbook(
			smallUnit({
				"uses.csv": "at,kit,what,by,note\n2027-02-10 10:00,A,used,,",
				"rounds-done.csv": "date,start,kits\n2027-02-25,07:00,A\n2027-02-01,07:00,A",
			}),
		);
		expect(usesAreKept(tables, 7)(day)).toBe(kept);
	});

	test("rounds alone do not say that no kit was used", () => {
		const { tables } = readWorkbook(
			smallUnit({ "rounds-done.csv": "date,start,kits\n2027-02-25,07:00,A" }),
		);
		expect(usesAreKept(tables, 7)("2027-02-25")).toBe(false);
	});
});

test("each line is named by what was done with the kit", () => {
	const parts = kitsUsedByDay(readWorkbook(smallUnit(files)).tables).get("2027-02-11") ?? [];
	expect(parts.map(({ figure }) => figure.label)).toEqual([
		"A kit used",
		"A kit used",
		"A kit opened",
	]);
});
