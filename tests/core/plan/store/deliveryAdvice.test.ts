import { expect, test } from "vitest";
import { deliveryAdvice } from "../../../../src/core/plan/store/deliveryAdvice.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const FIRST = "2027-03-01";
const LOTS = "item,lot,quantity,made_on,received_on,arrives_on,expires_on";
const PLACED = "ordered_on,item,packs,expected_on,received_on,packs_received,lot";

function said(
	{ lots = [], placed = [] }: { lots?: string[]; placed?: string[] },
	review_days: string | number = 7,
) {
	const files = {
		"lots.csv": [LOTS, ...lots].join("\n"),
		"placed.csv": [PLACED, ...placed].join("\n"),
	};
	const read = readWorkbook(unitWith({ review_days }, files));
	return wholeProblems(deliveryAdvice(read, FIRST)).map(
		({ weight, code, file, line, column, received }) =>
			[weight, code, file, line, column, received].join(" "),
	);
}

test.each<[string, Parameters<typeof said>[0], string[]]>([
	[
		"due on the first day",
		{ lots: ["vinegar,V1,5,,,2027-03-01,"], placed: ["2027-02-01,vinegar,2,2027-03-01,,,"] },
		[],
	],
	[
		"a lot due the day before",
		{ lots: ["vinegar,V0,5,,2027-02-01,,", "vinegar,V1,5,,,2027-02-28,"] },
		["advice delivery-overdue lots.csv 3 arrives_on 2027-02-28"],
	],
	[
		"a lot due the day before that has come",
		{ lots: ["vinegar,V1,5,,2027-02-28,2027-02-28,"] },
		[],
	],
	[
		"an order due the day before",
		{ placed: ["2027-02-01,vinegar,2,2027-02-28,,,"] },
		["advice delivery-overdue placed.csv 2 expected_on 2027-02-28"],
	],
	["an order given up", { placed: ["2027-02-01,vinegar,0,2027-02-28,,,"] }, []],
	["all of an order came", { placed: ["2027-02-01,vinegar,2,,2027-02-25,2,V1"] }, []],
	[
		"a part of an order came, as long ago as the store is looked over",
		{ placed: ["2027-02-01,vinegar,3,,2027-02-22,1,V1"] },
		["advice rest-of-order placed.csv 2 packs_received 1 of 3"],
	],
	[
		"a part of an order came the day before",
		{ placed: ["2027-02-01,vinegar,3,,2027-02-21,1,V1"] },
		[],
	],
])("%s", (_, store, expected) => {
	expect(said(store)).toEqual(expected);
});

test("a lot that never came and is out of date by now counts as neither", () => {
	const read = readWorkbook(
		unitWith({}, { "lots.csv": [LOTS, "vinegar,V1,5,,,2026-12-01,2027-02-28"].join("\n") }),
	);
	expect(deliveryAdvice(read, FIRST).map(({ message }) => message)).toEqual([
		"Lot V1 of vinegar was to arrive on 2026-12-01, has not been received, and could be used until 2027-02-28: it counts neither as on the way nor as stock. Put its days right, or take the line out.",
	]);
});

test.each([
	["2027-02-01,vinegar,2,2027-03-09,,,", true],
	["2027-02-01,vinegar,1,2027-03-09,,,", false],
	["2027-02-01,liquid,2,2027-03-09,,,", false],
	["2027-02-02,vinegar,2,2027-03-09,,,", false],
])("a line of its own for the rest of three packs, %s: %s", (line, follows) => {
	const part = "2027-02-01,vinegar,3,,2027-02-25,1,V1";
	expect(said({ placed: [part, line] })).toHaveLength(follows ? 0 : 1);
});

// The page's own act gives an order up so: its line stays, with 0 packs (record.md: received in part, or given up).
test.each([
	["2027-02-01,vinegar,0,,,,", true],
	["2027-02-02,vinegar,0,,,,", false],
	["2027-02-01,liquid,0,,,,", false],
])("the rest of three packs given up, %s: %s", (line, isSaid) => {
	const part = "2027-02-01,vinegar,3,,2027-02-25,1,V1";
	expect(said({ placed: [part, line] })).toHaveLength(isSaid ? 0 : 1);
});

test("where nobody can read how often the store is looked over, a week counts", () => {
	const on = (day: number) =>
		said({ placed: [`2027-02-01,vinegar,3,,2027-02-${day},1,V1`] }, "often");
	expect([on(22).length, on(21).length]).toEqual([1, 0]);
});
