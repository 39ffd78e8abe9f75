import { afterEach, expect, test } from "vitest";
import { nowhere, problem } from "../../../src/core/problem.ts";
import { problemWords } from "../../../src/ui/format/problemWords.ts";
import { shownDay, workWithDaysAround } from "../../../src/ui/format/shownDay.ts";

afterEach(() => workWithDaysAround(undefined));

const told = (message: string, code = "late-lot") =>
	problemWords(problem(nowhere, { code, received: "", allowed: "", message }));

test.each([
	[
		"The kind is not listed in kinds.csv.",
		"The kind is not listed in “Kinds of kit and their pieces”.",
	],
	["It was due on 2027-03-03.", "It was due on Wed 3 Mar."],
	["48 pct_w_v is not sold.", "48 % w/v is not sold."],
	['"pct_w_v of kits.csv" was found.', '"pct_w_v of kits.csv" was found.'],
	["No sheet is called other.csv.", "No sheet is called other.csv."],
])("%s reads: %s", (message, words) => {
	expect(told(message)).toBe(words);
});

test("the example of how a day is written stays", () => {
	const message = "Date: it is blank; allowed is a date as year-month-day, for example 2027-03-01.";
	expect(told(message, "bad-cell")).toBe(message);
});

test.each([
	["2027-03-01", "2027-08-31", "Tue 31 Aug"],
	["2027-03-01", "2027-09-01", "Wed 1 Sep 2027"],
	["2027-03-01", "2026-08-29", "Sat 29 Aug 2026"],
	[undefined, "2026-08-29", "Sat 29 Aug"],
])("where people work with days around %s, %s is %s", (around, date, words) => {
	workWithDaysAround(around);
	expect(shownDay(date)).toBe(words);
});
