import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { withUsageTaken } from "../../../../src/core/edit/withUsageTaken.ts";
import { failuresOverDays } from "../../../../src/core/plan/record/failuresOverDays.ts";
import { itemsOverDays, usedOf } from "../../../../src/core/plan/record/itemsOverDays.ts";
import { roundsOverDays } from "../../../../src/core/plan/record/roundsOverDays.ts";
import { usageLearned } from "../../../../src/core/plan/record/usageLearned.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { booksAfter, journalKinds } from "../../../../src/core/stock/onHand.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { smallUnit } from "../../smallUnit.ts";

const march = daysOfMonth("2027-03");
const readOf = (files: Record<string, string>) => readWorkbook(smallUnit(files));
const itemOf = (files: Record<string, string>, name: string) => {
	const found = itemsOverDays(readOf(files), march).find(({ item }) => item === name);
	if (!found) throw new Error(`no item ${name}`);
	return found;
};

describe("the books of a month", () => {
	// L1: 10 − 1 before March, then 9 − 2 − 0.5 = 6.5, counted 6 (0.5 less). L2, expired on the 15th: 4 on the 10th.
	const files = {
		"lots.csv": `item,lot,quantity,received_on,expires_on
			liquid,L1,10,2027-01-20,2027-07-10
			liquid,L2,4,2027-03-10,2027-03-15
			liquid,L3,7,2027-04-02,
			powder,P1,500,2027-01-20,2027-03-04`,
		"journal.csv": `day,item,lot,entry,quantity,note
			2027-02-20,liquid,L1,issue,1,
			2027-03-02,liquid,L1,issue,2,
			2027-03-03,liquid,L1,loss,0.5,
			2027-03-04,liquid,L1,count,6,
			2027-04-04,liquid,L1,issue,6,`,
	};

	test("add up, worked by hand", () => {
		const found = itemOf(files, "liquid");
		expect(found).toMatchObject({
			isKept: true,
			opening: 9,
			received: 4,
			issued: 2,
			lost: 0.5,
			difference: -0.5,
			closing: 10,
			countedOn: "2027-03-04",
			daysWithoutStock: 0,
			largestIssue: 2,
		});
		// 9 + 4 − 0.5 − 10: the two issued and the half that the count missed.
		expect(usedOf(found)).toBe(2.5);
	});

	test("without a count, what was issued beyond the books was used too", () => {
		const issue = "day,item,lot,entry,quantity,note\n2027-03-02,liquid,L1,issue,12,";
		const found = itemOf({ ...files, "journal.csv": issue }, "liquid");
		expect([usedOf(found), found.difference]).toEqual([12, 2]);
	});

	test("a lot out of date is no stock, and a month without a line is not kept", () => {
		expect(itemOf(files, "powder")).toMatchObject({ isKept: false, daysWithoutStock: 27 });
	});

	test("whatever is written, closing is opening and all that happened, as the store's own books have it", () => {
		const entries = fc.array(
			fc.record({
				day: fc.constantFrom("2027-02-26", "2027-03-01", "2027-03-09", "2027-03-31", "2027-04-01"),
				entry: fc.constantFrom(...journalKinds),
				quantity: fc.integer({ min: 0, max: 20 }),
			}),
			{ maxLength: 12 },
		);
		fc.assert(
			fc.property(entries, (all) => {
				const lines = all.map(
					({ day, entry, quantity }) => `${day},liquid,L1,${entry},${quantity},`,
				);
				const found = itemOf(
					{
						"lots.csv": "item,lot,quantity,received_on\nliquid,L1,10,2027-01-20",
						"journal.csv": ["day,item,lot,entry,quantity,note", ...lines].join("\n"),
					},
					"liquid",
				);
				const until = (day: string) =>
					booksAfter(
						10,
						all.filter((each) => each.day <= day),
					).quantity;
				const { opening, received, issued, lost, difference, closing } = found;
				expect([opening, closing]).toEqual([until("2027-02-28"), until("2027-03-31")]);
				expect(opening + received - issued - lost + difference).toBe(closing);
			}),
			{ seed: 16 },
		);
	});
});

describe("the rounds of a month", () => {
	const found = roundsOverDays(
		readOf({
			"uses.csv": `at,kit,what,by,note
				2027-03-01 06:00,A,used,,
				2027-03-04 22:00,B,used,,
				2027-03-05 10:00,C,opened,,
				2027-03-08 23:00,,none_ready,,`,
			"rounds-done.csv": `date,start,kits,strength_reading_pct,soak_in,soak_out,descaled
				2027-03-03,07:00,A,0.5,07:50,08:09,no
				2027-03-07,23:30,B C X,0.49,23:50,00:10,yes
				2027-04-03,07:00,A,0.1,07:50,07:51,yes`,
		}),
		march,
	);

	test("short soaks, also over midnight, and readings under the strength", () => {
		expect(found.shortSoaks).toEqual([{ date: "2027-03-03", start: 7 * 60, found: 19 }]);
		expect(found.weakReadings).toEqual([{ date: "2027-03-07", start: 23 * 60 + 30, found: 0.49 }]);
		expect([found.rounds, found.kits, found.pieces, found.descalings]).toEqual([2, 4, 15, 1]);
	});

	test("days on which a kit waited and no round was done", () => {
		// A waits from the 1st; B, used after the last start of the 4th, from the 5th.
		expect(found.leftOut).toEqual(["2027-03-01", "2027-03-02", "2027-03-05", "2027-03-06"]);
		expect(roundsOverDays(readOf({}), march).leftOut).toBeUndefined();
	});
});

test("what failed, by test and by kit", () => {
	const { byFinding, byKit } = failuresOverDays(
		readOf({
			"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills
				2027-03-02 10:00,A,4,yes,
				2027-03-03 10:00,A,5,yes,no
				2027-03-03 11:00,B,5,yes,no
				2027-03-04 10:00,B,5,yes,yes
				2027-04-03 10:00,B,5,no,yes`,
		}).tables,
		march,
	);
	expect(byFinding).toEqual([
		{ name: "the bag does not refill", times: 2 },
		{ name: "1 of 5 pieces missing", times: 1 },
	]);
	expect(byKit).toEqual([
		{ name: "A", times: 2 },
		{ name: "B", times: 1 },
	]);
});

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

	test.each([
		["thirty rounds, ten issues", files(30, issues(10, 9)), [3, "enough"]],
		["29 rounds", files(29, issues(10, 8.7)), [3, "done_too_seldom"]],
		["one issue for all of them", files(30, issues(1, 90)), [3, "issued_too_seldom"]],
	] as const)("%s", (_, changes, expected) => {
		const read = readOf(changes);
		const rounds = roundsOverDays(read, march);
		const learned = usageLearned(read, itemOf(changes, "powder"), rounds, march.length);
		expect(learned && [Number(learned.each.toPrecision(9)), learned.evidence]).toEqual(expected);
		expect(usageLearned(read, itemOf(changes, "liquid"), rounds, march.length)).toBeUndefined();
	});

	test("taken over, the line keeps what was noted of it", () => {
		const before = smallUnit(files(30, issues(10, 9)));
		const after = withUsageTaken(before, 2, 3, "own count");
		expect(after.tables["usage.csv"]?.rows).toEqual([
			["powder", "round", "3", "a guess; own count"],
			["liquid", "load", "2", ""],
		]);
		expect(withUsageTaken(before, 99, 3, "own count")).toBe(before);
	});
});
