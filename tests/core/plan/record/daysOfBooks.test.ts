import { describe, expect, test } from "vitest";
import { daysOfBooks } from "../../../../src/core/plan/record/daysOfBooks.ts";
import { itemsAgainstPlan } from "../../../../src/core/plan/record/itemsAgainstPlan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { unitWith } from "../../smallUnit.ts";

const march = daysOfMonth("2027-03");
const readOf = (files: Record<string, string>) => readWorkbook(unitWith({}, files));
const journal = (...days: string[]) => ({
	"journal.csv": [
		"day,item,lot,entry,quantity",
		...days.map((day) => `${day},powder,P1,issue,6`),
	].join("\n"),
});
const rounds = (...days: string[]) => ({
	"rounds-done.csv": ["date,start,kits", ...days.map((day) => `${day},07:00,A`)].join("\n"),
});
const births = (day: string) => ({ "records.csv": `date,births,kits_used\n${day},5,` });

test.each<[string, Record<string, string>, [string, string] | undefined]>([
	[
		"rounds since the 10th",
		{ ...journal("2027-01-04", "2027-03-20"), ...rounds("2027-03-10", "2027-03-12") },
		["2027-03-10", "2027-03-20"],
	],
	[
		"the journal since the 10th",
		{ ...journal("2027-03-12", "2027-03-10"), ...rounds("2027-02-10"), ...births("2027-03-25") },
		["2027-03-10", "2027-03-25"],
	],
	[
		"a whole month of both",
		{ ...journal("2027-01-04", "2027-04-02"), ...rounds("2027-02-10") },
		["2027-03-01", "2027-03-31"],
	],
	[
		"without a round the journal alone",
		{ ...journal("2027-03-05", "2027-03-07") },
		["2027-03-05", "2027-03-07"],
	],
	["before anything was written down", rounds("2027-04-05"), undefined],
	["nothing is written down", {}, undefined],
])("%s", (_what, files, expected) => {
	const days = daysOfBooks(readOf(files), march);
	expect(days.length === 0 ? undefined : [days[0], days.at(-1)]).toEqual(expected);
});

// record.md, usage with evidence: 6 g go at each round of every day, and the plan's line says 6.
describe("a journal older than the rounds", () => {
	const days = Array.from({ length: 90 }, (_, at) =>
		new Date(Date.UTC(2027, 0, 1 + at)).toISOString().slice(0, 10),
	);
	const read = readOf({
		"usage.csv": "item,basis,quantity\npowder,round,6",
		"lots.csv": "item,lot,quantity,received_on\npowder,P1,5000,2026-12-20",
		...journal(...days),
		...rounds(...days.slice(59)),
	});

	test("tells of the rounds what went for them", () => {
		// 31 rounds from 1 March on: 31 × 6; what went in January and February is of rounds that nobody wrote down.
		expect(itemsAgainstPlan(read, days)).toMatchObject([{ used: 186, planned: 186 }]);
	});
});
