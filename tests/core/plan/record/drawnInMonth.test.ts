import { describe, expect, test } from "vitest";
import { itemsOverDays } from "../../../../src/core/plan/record/itemsOverDays.ts";
import { spanTable } from "../../../../src/core/plan/record/monthTable.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { unitWith } from "../../smallUnit.ts";

/** 7 L of 0.5 % from 3.5 % take 1 L of lot L1, which holds 10 L. */
const round = (date: string, litres = "7") => `${date},07:00,A,,L1,${litres}`;

function februaryOf(by: string, rounds: readonly string[], journal: readonly string[]) {
	const read = readWorkbook(
		unitWith(
			{ product_drawn_by: by },
			{
				"rounds-done.csv": ["date,start,kits,product,lot,litres", ...rounds].join("\n"),
				"journal.csv": ["day,item,lot,entry,quantity,note", ...journal].join("\n"),
			},
		),
	);
	const days = daysOfMonth("2027-02");
	const row = spanTable(read, days).rows.find(
		({ measure }) => measure.outcome.ok && measure.outcome.value === "liquid",
	);
	const saidIn = (key: "done" | "note") => row?.[key].outcome.ok && row[key].outcome.value;
	const books = itemsOverDays(read, days).find(({ item }) => item === "liquid");
	return { done: saidIn("done"), note: saidIn("note"), books };
}

describe("what rounds draw is issued in the month", () => {
	const two = [round("2027-02-20"), round("2027-02-21", "3.5"), round("2027-01-31")];
	const issues = ["2027-02-20,liquid,L1,issue,4,", "2027-02-24,liquid,L1,issue,0.25,"];

	test.each([
		// 1 + 0.5 L; January's litre is before the month.
		["rounds alone", "rounds", two, [], 1.5, "2 of 28 days recorded", 9, 7.5],
		// The issue of the 20th is what the round drew; that of the 24th went elsewhere.
		["beside the journal", "rounds", two, issues, 1.75, "3 of 28 days recorded", 9, 7.25],
		["the journal alone", "journal", two, issues, 4.25, "2 of 28 days recorded", 10, 5.75],
		["nobody", "journal", two, [], null, "not recorded", 10, 10],
	] as const)("%s", (_who, by, rounds, journal, done, note, opening, closing) => {
		const found = februaryOf(by, rounds, journal);
		expect([found.done, found.note]).toEqual([done, note]);
		expect(found.books).toMatchObject({
			opening,
			closing,
			issued: done ?? 0,
			isKept: done !== null,
		});
	});
});
