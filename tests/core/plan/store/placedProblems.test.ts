import { expect, test } from "vitest";
import { placedProblems } from "../../../../src/core/plan/store/placedProblems.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const LAST_DAY = "2027-03-07";
const ITEMS = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";
const LOTS = "item,lot,quantity,made_on,received_on,arrives_on,expires_on";
const found = (lines: string, changes: Record<string, string | null> = {}) =>
	placedProblems(
		readWorkbook(
			smallUnit({
				"placed.csv": `ordered_on,item,packs,expected_on,received_on,packs_received,lot\n${lines}`,
				"lots.csv": `${LOTS}\nvinegar,V1,5,,2027-02-10,,\npowder,P2,few,,2027-02-10,,`,
				...changes,
			}),
		),
		LAST_DAY,
	).map(({ code, weight, line, column, received }) => [code, weight, line, column, received]);

test.each([
	["on the way", "2027-03-01,vinegar,2,2027-03-08,,,"],
	["due on the day it was placed", "2027-03-01,vinegar,2,2027-03-01,,,"],
	["placed and received on the last day", `${LAST_DAY},vinegar,2,,${LAST_DAY},,V1`],
	["given up", "2027-03-01,vinegar,0,,,,"],
	["received, and nothing of it came", "2027-02-01,vinegar,2,,2027-02-10,0,"],
	["into a lot whose line has a mistake", "2027-02-01,powder,2,,2027-02-10,,P2"],
	[
		"received in two lots, or on two days placed, or of two sizes",
		`2027-02-01,vinegar,2,,2027-02-10,,V1
		2027-02-02,vinegar,2,,2027-02-10,,V1
		2027-02-01,vinegar,3,,2027-02-10,,V1
		2027-02-01,powder,2,,2027-02-10,,P2`,
	],
])("an order is right: %s", (_what, lines) => {
	expect(found(lines)).toEqual([]);
});

test.each([
	[
		"of no item of the store",
		"2027-04-01,ribbon,2,,,1,",
		[["unknown-item", "error", 2, "item", "ribbon"]],
	],
	[
		"placed after the plan",
		"2027-03-08,vinegar,2,,,,",
		[["record-in-future", "error", 2, "ordered_on", "2027-03-08"]],
	],
	[
		"received after the plan",
		"2027-03-01,vinegar,2,,2027-03-08,,V1",
		[["record-in-future", "error", 2, "received_on", "2027-03-08"]],
	],
	[
		"received before it was placed",
		"2027-03-02,vinegar,2,,2027-03-01,,V1",
		[["received-before-ordered", "error", 2, "received_on", "2027-03-01"]],
	],
	[
		"due before it was placed",
		"2027-03-02,vinegar,2,2027-03-01,,,",
		[["expected-before-ordered", "error", 2, "expected_on", "2027-03-01"]],
	],
	[
		"packs and no day",
		"2027-03-02,vinegar,2,,,1,",
		[["received-without-day", "error", 2, "received_on", "1, and no day"]],
	],
	[
		"no packs, and a day too early",
		"2027-03-02,vinegar,0,,2027-03-01,,",
		[
			["received-before-ordered", "error", 2, "received_on", "2027-03-01"],
			["received-and-given-up", "error", 2, "packs", "0"],
		],
	],
	[
		"received twice",
		"2027-03-02,vinegar,2,,2027-03-03,,V1\n2027-03-02,vinegar,2,,2027-03-04,1,V1",
		[["order-received-twice", "error", 3, "received_on", "lines 2 and 3"]],
	],
	[
		"into a lot of another item, or of none",
		"2027-03-02,vinegar,2,,2027-03-03,,P2\n2027-03-02,vinegar,2,,2027-03-03,,",
		[
			["received-without-lot", "error", 2, "lot", "P2"],
			["received-without-lot", "error", 3, "lot", ""],
		],
	],
])("an order is wrong: %s", (_what, lines, problems) => {
	expect(found(lines)).toEqual(problems);
});

test("an item whose line has a mistake, or a store without a list, is no reason to doubt an order", () => {
	const order = "2027-03-01,ribbon,2,,,,";
	expect(found(order, { "items.csv": `${ITEMS}\nribbon,other,piece,none,4,7,5,0.95` })).toEqual([]);
	expect(found(order, { "items.csv": null })).toEqual([]);
});
