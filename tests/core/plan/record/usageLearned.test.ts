import { describe, expect, test } from "vitest";
import { withUsageTaken } from "../../../../src/core/edit/withUsageTaken.ts";
import { itemsOverDays } from "../../../../src/core/plan/record/itemsOverDays.ts";
import { roundsOverDays } from "../../../../src/core/plan/record/roundsOverDays.ts";
import { timesDone } from "../../../../src/core/plan/record/timesDone.ts";
import { usageLearned } from "../../../../src/core/plan/record/usageLearned.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const march = daysOfMonth("2027-03");
const readOf = (files: Record<string, string>) => readWorkbook(smallUnit(files));
describe("what goes each time, by the books", () => {
	const files = (rounds: number, issue: string) => ({
		"usage.csv": "item,basis,quantity,note\npowder,round,2,a guess\nliquid,load,2,",
		"rounds-done.csv": [
			"date,start,kits",
			...Array.from(
				{ length: rounds },
				(_, at) => `2027-03-0${1 + (at % 9)},0${Math.floor(at / 9)}:00,A`,
			),
		].join("\n"),
		"lots.csv": "item,lot,quantity,received_on\npowder,P1,500,2027-01-20\nliquid,L1,50,2027-01-20",
		"journal.csv": ["day,item,lot,entry,quantity,note", issue].join("\n"),
	});
	const issues = (count: number, each: number) =>
		Array.from({ length: count }, () => `2027-03-05,powder,P1,issue,${each},`).join("\n");

	const learnedFrom = (files: Record<string, string>, name = "powder") => {
		const read = readOf(files);
		const item = itemsOverDays(read, march).find(({ item }) => item === name);
		if (!item) throw new Error(`no item ${name}`);
		return usageLearned(read, item, roundsOverDays(read, march), march.length);
	};

	test.each([
		["thirty rounds, ten issues", files(30, issues(10, 9)), [3, "enough"]],
		["29 rounds", files(29, issues(10, 8.7)), [3, "done_too_seldom"]],
		["one issue for all of them", files(30, issues(1, 90)), [3, "issued_too_seldom"]],
	] as const)("%s", (_, changes, expected) => {
		const learned = learnedFrom(changes);
		expect(learned && [Number(learned.each.toPrecision(9)), learned.evidence]).toEqual(expected);
		expect(learnedFrom(changes, "liquid")).toBeUndefined();
	});

	test.each([
		["no line of what is used up", { "usage.csv": "item,basis,quantity" }],
		[
			"two lines that share it",
			{ "usage.csv": "item,basis,quantity\npowder,round,2\npowder,kit,1" },
		],
		["no line of the journal", { "journal.csv": "day,item,lot,entry,quantity" }],
		[
			"only a count",
			{ "journal.csv": "day,item,lot,entry,quantity\n2027-03-05,powder,P1,count,500" },
		],
		["no round", { "rounds-done.csv": "date,start,kits" }],
		[
			"a line beside it that nobody can read",
			{ "usage.csv": "item,basis,quantity\npowder,round,2\npowder,kit,some" },
		],
	] as const)("nothing is learned from %s", (_, changes) => {
		expect(learnedFrom({ ...files(30, issues(10, 9)), ...changes })).toBeUndefined();
	});

	test.each([
		["day", 31],
		["round", 4],
		["load", undefined],
		["kit", 9],
		["piece", 45],
		["worker_round", 12],
		["descale", 2],
	] as const)("a month has done what is counted by the %s so often: %s", (basis, times) => {
		const done = { rounds: 4, kits: 9, pieces: 45, descalings: 2 };
		const read = readWorkbook(unitWith({ workers_per_round: 3 }));
		expect(timesDone(read, basis, { ...roundsOverDays(read, march), ...done }, 31)).toBe(times);
	});

	test("by people in a round that nobody can read it was done nobody knows how often", () => {
		const read = readWorkbook(unitWith({ workers_per_round: "two" }, files(30, issues(10, 9))));
		const rounds = roundsOverDays(read, march);
		expect(timesDone(read, "worker_round", rounds, 31)).toBeUndefined();
		expect(timesDone(read, "round", rounds, 31)).toBe(30);
	});

	test("taken over, the line keeps what was noted of it", () => {
		const before = smallUnit(files(30, issues(10, 9)));
		const after = withUsageTaken(before, 2, 3, "own count");
		expect(after.tables["usage.csv"]?.rows).toEqual([
			["powder", "round", "3", "a guess; own count"],
			["liquid", "load", "2", ""],
		]);
		const blank = withUsageTaken(before, 3, 4, "own count");
		expect(blank.tables["usage.csv"]?.rows[1]).toEqual(["liquid", "load", "4", "own count"]);
		expect(withUsageTaken(before, 99, 3, "own count")).toBe(before);
	});
});
