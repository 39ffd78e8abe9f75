import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { madeOnProblem } from "../../../../src/core/plan/store/madeOnProblem.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { contentOf } from "../../contentOf.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

// The small unit's plan begins on 2027-03-01.
const foundIn = (lot: string, journal?: string) =>
	plan(
		smallUnit({
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				${lot}`,
			...(journal ? { "journal.csv": `day,item,lot,entry,quantity,note\n${journal}` } : {}),
		}),
	)
		.problems.filter(({ code }) => code.startsWith("made-"))
		.map(({ code, weight, line, column }) => [code, weight, line, column].join(" "));

test.each([
	["on the first day", "liquid,L,1,2027-03-01,,,", []],
	["in a year to come", "liquid,L,1,2028-02-01,,,", ["made-in-future error 2 made_on"]],
	["a day after the plan begins", "liquid,L,1,2027-03-02,,,", ["made-in-future error 2 made_on"]],
	["of any item", "gauze squares,G,1,2027-03-02,,,", ["made-in-future error 2 made_on"]],
	["on the day it came", "liquid,L,1,2027-02-01,2027-02-01,,", []],
	["after it came", "liquid,L,1,2027-02-02,2027-02-01,,", ["made-after-received error 2 made_on"]],
	["of one that is still to come", "liquid,L,1,2027-03-02,,2027-03-05,", []],
	[
		"of one that was announced and has come",
		"liquid,L,1,2027-03-02,2027-03-05,2027-03-05,",
		["made-in-future error 2 made_on"],
	],
])("made %s", (_what, lot, problems) => {
	expect(foundIn(lot)).toEqual(problems);
});

test("made after the plan begins, of one that an entry of the journal has brought in", () => {
	expect(foundIn("liquid,L,0,2027-03-02,,2027-03-05,", "2027-03-01,liquid,L,receipt,5,")).toEqual([
		"made-in-future error 2 made_on",
	]);
	for (const other of ["powder,L", "liquid,M"])
		expect(foundIn("liquid,L,0,2027-03-02,,2027-03-05,", `2027-03-01,${other},receipt,5,`)).toEqual(
			[],
		);
});

// Read on 2027-02-20, before the plan begins, by a unit that has written nothing down yet.
const foundOn = (today: string, lot: string, changes: Record<string, string> = {}) =>
	plan(
		smallUnit({
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on\n${lot}`,
			...changes,
		}),
		today,
	).problems.filter(({ code }) => code.startsWith("made-"));

test.each([
	["today", "liquid,L,1,2027-02-20,,", []],
	["tomorrow, though the plan begins later", "liquid,L,1,2027-02-21,,", ["made-after-today"]],
	["tomorrow, of any item", "gauze squares,G,1,2027-02-21,,", ["made-after-today"]],
	[
		"tomorrow, of a lot that is announced",
		"liquid,L,1,2027-02-21,,2027-03-05",
		["made-after-today"],
	],
	["after it came", "liquid,L,1,2027-02-22,2027-02-21,", ["made-after-received"]],
])("made %s, by a clock", (_what, lot, codes) => {
	expect(foundOn("2027-02-20", lot).map(({ code }) => code)).toEqual(codes);
});

test("a day after today is an error of its cell, and names both days and the clock", () => {
	expect(foundOn("2027-02-20", "liquid,L,1,2027-02-21,,")).toMatchObject([
		{
			weight: "error",
			line: 2,
			column: "made_on",
			received: "2027-02-21",
			allowed: "2027-02-20 or earlier",
			message: expect.stringContaining("by this computer's clock today is 2027-02-20"),
		},
	]);
});

test("and nothing is measured out from the lot", () => {
	const measured = (today?: string) => {
		const changes = {
			"lots.csv": "item,lot,quantity,made_on\nliquid,L,10,2027-02-21",
		};
		return contentOf(plan(smallUnit(changes), today), "mixing.csv", "lot", "product_quantity")[0];
	};
	expect(measured()).toEqual(["L", expect.any(Number)]);
	expect(measured("2027-02-20")).not.toContainEqual(expect.any(Number));
});

test.each([
	["uses.csv", "at,kit,what,by,note\n2027-02-20 23:10,A,used,,"],
	["records.csv", "date,births,kits_used\n2027-02-20,5,1"],
	["placed.csv", "ordered_on,item,packs\n2027-02-20,liquid,1"],
])("a clock behind %s is wrong, and nothing is held against it", (file, text) => {
	const lot = "liquid,L,1,2027-02-20,,";
	expect(foundOn("2027-02-19", lot)).toHaveLength(1);
	expect(foundOn("2027-02-19", lot, { [file]: text })).toEqual([]);
	expect(foundOn("2027-02-20", lot, { [file]: text })).toEqual([]);
});

test("without a first day of the plan no day is after it", () => {
	const read = readWorkbook(
		unitWith(
			{ plan_start: "" },
			{ "lots.csv": "item,lot,quantity,made_on\nliquid,L,1,2027-02-01" },
		),
	);
	expect(read.tables.lots.rows.map((row) => madeOnProblem(read, row)?.code)).toEqual([undefined]);
});

// calculations.md: no number is invented to fill a hole. Nothing is measured out from such a lot, yet it stood as
// usable stock, of which each preparation took one litre, with an end where nobody knows how strong it is.
test.each([
	["right", "2027-01-10,,,2027-08-10", 10, true],
	["wrong", "2028-01-10,,,2027-08-10", 10, false],
	["wrong, of a lot without an end", "2028-01-10,,,", 10, false],
	["wrong, of a lot used up", "2028-01-10,,,", 0, true],
	["wrong, of a lot that is out of date", "2028-01-10,,,2027-02-28", 10, true],
])("where a day of making is %s", (_what, dates, quantity, isKnown) => {
	const made = plan(
		smallUnit({
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				liquid,L1,10,2027-01-10,,,2027-07-10
				liquid,L2,${quantity},${dates}
				tablets,T,100,2028-01-10,,,`,
		}),
	);
	const order = (item: string) =>
		contentOf(made, "order.csv", "item", "usable", "order_packs").filter(([of]) => of === item)[0];
	const known = isKnown ? expect.any(Number) : undefined;
	expect(order("liquid")).toEqual(["liquid", known, known]);
	// Tablets do not fade: their age says nothing of their strength.
	expect(order("tablets")).toEqual(["tablets", 100, 0]);
});

test("a lot whose day of making is wrong is usable until no day that is known, of a product that fades", () => {
	const made = plan(
		smallUnit({
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				liquid,L1,10,2027-01-10,,,2027-07-10
				liquid,L2,10,2028-01-10,,,2027-08-10
				gauze squares,G,10,2028-01-10,,,2027-09-10`,
		}),
	);
	expect(contentOf(made, "strength.csv", "lot", "last_usable_day")).toEqual([
		["L1", "2027-07-10"],
		["L2", undefined],
	]);
	expect(contentOf(made, "stock.csv", "lot", "usable_until")).toEqual([
		["L1", "2027-07-10"],
		["L2", undefined],
		["G", "2027-09-10"],
	]);
});
