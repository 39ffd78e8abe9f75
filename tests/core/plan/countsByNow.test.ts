import { expect, test } from "vitest";
import { countsByNow } from "../../../src/core/plan/countsByNow.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { contentOf } from "../contentOf.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";
import { HEADER } from "./kits/recordedUnit.ts";

// The plan goes from 1 to 7 March 2027. record.md, "Stock on hand": lots and journal; what is
// dated after the plan is kept and not used until the clock has come to it, as of uses, rounds and checks.
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

const isOfFuture = ({ code }: { readonly code: string }) => /in-future$/.test(code);

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

// record.md, "What follows": a kit stands as the latest of its events says, and its label with it.
test("kits used, checked and reprocessed when the week is over stand so by the clock, before the plan moves on", () => {
	const record = smallUnit({
		"uses.csv": "at,kit,what,by,note\n2027-03-08 02:00,A,used,,",
		"checks.csv": [HEADER, "2027-03-08 06:00,B,5,yes,yes,no,yes,yes,,,before_use"].join("\n"),
		"placed.csv": `ordered_on,item,packs,expected_on,received_on,packs_received,lot
			2027-03-01,liquid,2,2027-03-08,2027-03-08,,L1
			2027-03-08,liquid,2,,,,`,
	});
	const states = (today?: string) =>
		contentOf(plan(record, today), "kit-register.csv", "kit", "state").slice(0, 2);
	expect(states("2027-03-08")).toEqual([
		["A", "to_reprocess"],
		["B", "in_repair"],
	]);
	expect(plan(record, "2027-03-08").problems.filter(isOfFuture)).toEqual([]);
	expect(states()).toEqual([
		["A", "ready"],
		["B", "ready"],
	]);
	expect(plan(record).problems.filter(isOfFuture)).toHaveLength(4);
});

test("a round done when the week is over draws its product by the clock", () => {
	const drawn = unitWith(
		{ product_drawn_by: "rounds" },
		{
			"rounds-done.csv":
				"date,start,ended,kits,product,lot,litres\n2027-03-08,07:00,08:30,A,liquid,L1,7",
		},
	);
	const before = onHand(smallUnit()) as number;
	expect(onHand(drawn)).toBe(before);
	// 7 L × 0.5 % ÷ 3.5 % = 1 L, and what the measure's step adds to it.
	expect(onHand(drawn, "2027-03-08")).toBeLessThanOrEqual(before - 1);
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
