import { expect, test } from "vitest";
import { countsByNow } from "../../../src/core/plan/countsByNow.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { contentOf } from "../contentOf.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

// The plan goes from 1 to 7 March 2027. record.md, "Stock on hand": lots and journal; what is
// dated after the plan is kept and not used, as of uses, rounds and checks.
const journal = (...lines: string[]) => ({
	"journal.csv": ["day,item,lot,entry,quantity,note", ...lines].join("\n"),
});
const onHand = (workbook: ReturnType<typeof smallUnit>, today?: string) =>
	contentOf(plan(workbook, today), "stock.csv", "item", "on_hand").find(
		([item]) => item === "liquid",
	)?.[1];
const inFuture = (workbook: ReturnType<typeof smallUnit>, today?: string) =>
	plan(workbook, today)
		.problems.filter(({ code }) => code === "record-in-future")
		.map(({ file, line, column, received }) => [file, line, column, received]);

test.each([
	["the plan's last day", "2027-03-07", undefined, true],
	["the day after it", "2027-03-08", undefined, false],
	["the day after it, by a clock of that day", "2027-03-08", "2027-03-08", true],
	["a day after the clock's", "2027-03-09", "2027-03-08", false],
	["a day of the plan, by a clock before it", "2027-03-05", "2027-02-20", true],
])("what is dated on %s", (_, day, today, counts) => {
	const read = readWorkbook(unitWith({}));
	expect(countsByNow(today === undefined ? read : { ...read, today }, day)).toBe(counts);
});

test("a line of the journal after the plan changes no stock and is said", () => {
	const before = onHand(smallUnit()) as number;
	const later = smallUnit(
		journal("2027-03-07,liquid,L1,issue,1,", "2027-05-20,liquid,L1,issue,2,"),
	);
	expect(onHand(later)).toBe(before - 1);
	expect(inFuture(later)).toEqual([["journal.csv", 3, "day", "2027-05-20"]]);
});

test("the store counted when the week is over counts by the clock, before the plan moves on", () => {
	const counted = smallUnit(journal("2027-03-08,liquid,L1,count,3,"));
	expect([onHand(counted, "2027-03-08"), inFuture(counted, "2027-03-08")]).toEqual([3, []]);
});

test("a reading after the plan is not held against the lot", () => {
	const read = (day: string) =>
		smallUnit({
			"strength-readings.csv": `item,lot,read_on,strength_pct,method,note
				liquid,L1,2027-02-27,3.1,titration,
				liquid,L1,${day},0.1,titration,`,
		});
	const measured = (day: string) =>
		contentOf(plan(read(day)), "strength.csv", "lot", "measured_on").find(
			([lot]) => lot === "L1",
		)?.[1];
	expect([measured("2027-03-07"), measured("2027-05-20")]).toEqual(["2027-03-07", "2027-02-27"]);
	expect(inFuture(read("2027-05-20"))).toEqual([
		["strength-readings.csv", 3, "read_on", "2027-05-20"],
	]);
});
