import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { failuresOverDays } from "../../../../src/core/plan/record/failuresOverDays.ts";
import { itemsOverDays, usedOf } from "../../../../src/core/plan/record/itemsOverDays.ts";
import { roundsOverDays } from "../../../../src/core/plan/record/roundsOverDays.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { booksAfter, journalKinds } from "../../../../src/core/stock/onHand.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

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

	test("what came within the month, and the last day of which any lot was counted", () => {
		const found = itemOf(
			{
				"lots.csv": `item,lot,quantity,received_on,arrives_on,expires_on
					liquid,L1,10,2027-01-20,,
					liquid,L2,4,2027-03-01,,
					liquid,L3,7,2027-03-20,,
					liquid,L4,5,,,
					liquid,L5,6,,2027-02-20,
					liquid,L6,8,,2027-03-09,`,
				"journal.csv": `day,item,lot,entry,quantity,note
					2027-03-02,liquid,L1,receipt,3,
					2027-03-04,liquid,L1,count,12,
					2027-03-09,liquid,L1,count,11,
					2027-03-06,liquid,L2,count,4,
					2027-03-12,liquid,L3,issue,1,
					2027-03-10,liquid,L3,count,7,
					2027-03-09,liquid,L6,count,8,
					2027-03-28,liquid,L6,issue,2,`,
			},
			"liquid",
		);
		// L4 was always there; L3 since its first line, before the day it is said to have come on; L5, on its way, has none.
		expect(found).toMatchObject({
			opening: 10 + 5,
			received: 3 + 4 + 7 + 8,
			issued: 1 + 2,
			closing: 11 + 4 + 6 + 5 + 6,
			countedOn: "2027-03-10",
			daysWithoutStock: 0,
		});
	});

	test("a lot without a last day is stock on every day, and so is one that was always there", () => {
		for (const day of ["2027-01-20", ""])
			expect(
				itemOf(
					{ "lots.csv": `item,lot,quantity,received_on,expires_on\nliquid,L1,10,${day},` },
					"liquid",
				).daysWithoutStock,
			).toBe(0);
	});

	test("a lot out of date is no stock, and a month without a line is not kept", () => {
		expect(itemOf(files, "powder")).toMatchObject({ isKept: false, daysWithoutStock: 27 });
	});

	test("days to come are no days without stock: nobody knows of them", () => {
		const out = {
			"lots.csv": "item,lot,quantity,received_on\nliquid,L1,10,2027-01-20",
			"journal.csv": "day,item,lot,entry,quantity\n2027-03-09,liquid,L1,issue,10",
		};
		expect(itemOf(out, "liquid").daysWithoutStock).toBe(1);
		const later = { ...out, "records.csv": "date,births,kits_used\n2027-03-11,5," };
		expect(itemOf(later, "liquid").daysWithoutStock).toBe(3);
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
	const files = {
		"uses.csv": `at,kit,what,by,note
			2027-03-01 15:00,A,used,,
			2027-03-03 08:00,A,used,,
			2027-03-05 10:00,C,opened,,
			2027-03-08 21:00,B,used,,
			2027-03-08 23:00,,none_ready,,`,
		"rounds-done.csv": `date,start,kits,strength_reading_pct,soak_in,soak_out,descaled
			2027-03-03,07:00,A,0.5,07:50,08:09,no
			2027-03-07,23:30,A B C X,0.49,23:50,00:10,yes
			2027-03-10,07:00,B,,,,no
			2027-04-03,07:00,A,0.1,07:50,07:51,yes`,
	};
	const found = roundsOverDays(readOf(files), march);
	const leftOut = (changes: Record<string, string>, settings: Record<string, string> = {}) =>
		roundsOverDays(readWorkbook(unitWith(settings, { ...files, ...changes })), march).leftOut;

	test("short soaks, also over midnight, and readings under the strength", () => {
		expect(found.shortSoaks).toEqual([{ date: "2027-03-03", start: 7 * 60, found: 19 }]);
		expect(found.weakReadings).toEqual([{ date: "2027-03-07", start: 23 * 60 + 30, found: 0.49 }]);
		expect([found.rounds, found.kits, found.descalings]).toEqual([3, 6, 1]);
	});

	// calculations.md: no number is invented to fill a hole, never 0.
	test("pieces are those of all kits, or nobody knows how many", () => {
		const pieces = (kits: string, changes: Record<string, string> = {}) =>
			roundsOverDays(
				readOf({ "rounds-done.csv": `date,start,kits\n2027-03-03,07:00,${kits}`, ...changes }),
				march,
			).pieces;
		expect(pieces("A B")).toBe(10);
		expect(pieces("A B X")).toBeUndefined();
		expect(pieces("A", { "kinds.csv": "kind,piece,count\nother set,bag,1" })).toBeUndefined();
		expect(pieces("A", { "kinds.csv": "kind,piece,count\nbag set,bag,some" })).toBeUndefined();
		expect(
			pieces("A", { "kinds.csv": "kind,piece,count\nbag set,bag,1\nbag set,mask,some" }),
		).toBeUndefined();
		expect(pieces("")).toBe(0);
	});

	test("none is said to be short or weak by a limit that nobody can read", () => {
		const { shortSoaks, weakReadings } = roundsOverDays(
			readWorkbook(unitWith({ soak_minutes: "long", target_strength_pct: "strong" }, files)),
			march,
		);
		expect([shortSoaks, weakReadings]).toEqual([undefined, undefined]);
	});

	test("days on which a kit waited and no round was done", () => {
		// A waits from the 1st, and again after the round of the 3rd; B, used at the last start of the 8th, from the 9th.
		const days = ["01", "02", "04", "05", "06", "09"].map((day) => `2027-03-${day}`);
		expect(found.leftOut).toEqual(days);
		expect(roundsOverDays(readOf({}), march).leftOut).toBeUndefined();
	});

	test("no round is left out where each follows its use, none is listed, or after the last line", () => {
		expect(leftOut({}, { reprocessing: "after_each_use" })).toEqual([]);
		expect(leftOut({ "rounds.csv": "start,label" })).toEqual([]);
		expect(
			leftOut({
				"uses.csv": "at,kit,what\n2027-03-02 06:00,A,used\n2027-03-04 06:00,B,used",
				"rounds-done.csv": "date,start,kits\n2027-03-01,07:00,A",
			}),
		).toEqual(["2027-03-02", "2027-03-03", "2027-03-04"]);
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
