import { expect, test } from "vitest";
import { deliveryAdvice } from "../../../../src/core/plan/store/deliveryAdvice.ts";
import { isComing, lotsOnHand } from "../../../../src/core/plan/store/lotsOnHand.ts";
import { ordersOnTheWay } from "../../../../src/core/plan/store/ordersOnTheWay.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const PLACED = "ordered_on,item,packs,expected_on,received_on,packs_received,lot";
const placed = (...lines: string[]) =>
	readWorkbook(smallUnit({ "placed.csv": [PLACED, ...lines].join("\n") }));

test.each([
	["as said", "2027-02-25,vinegar,2,2027-03-04,,,", ["2027-03-04"]],
	["after the item's seven days", "2027-02-25,vinegar,2,,,,", ["2027-03-04"]],
	["never where it was given up", "2027-02-25,vinegar,0,,,,", []],
	["never where it has come", "2027-02-25,vinegar,2,,2027-03-01,,", []],
	["never of an item that is not listed", "2027-02-25,ribbon,2,,,,", []],
])("an order comes %s", (_when, line, days) => {
	expect(ordersOnTheWay(placed(line).tables).map(({ expectedOn }) => expectedOn)).toEqual(days);
});

test.each([
	["the rest has no line of its own", ["2027-02-20,vinegar,5,,2027-02-27,3,V"], [2]],
	["nothing of it came", ["2027-02-20,vinegar,5,,2027-02-27,0,V"], [2]],
	["its rest has one", ["2027-02-20,vinegar,5,,2027-02-27,3,V", "2027-02-20,vinegar,2,,,,"], []],
	[
		"the line is of another day, item or number",
		[
			"2027-02-20,vinegar,5,,2027-02-27,3,V",
			"2027-02-21,vinegar,2,,,,",
			"2027-02-20,powder,2,,,,",
			"2027-02-20,vinegar,1,,,,",
		],
		[2],
	],
	["all of it came", ["2027-02-20,vinegar,5,,2027-02-27,5,V"], []],
	["nobody says how much came", ["2027-02-20,vinegar,5,,2027-02-27,,V"], []],
] as const)("of an order %s", (_what, lines, asked) => {
	const found = deliveryAdvice(placed(...lines), "2027-03-01");
	expect(found.filter(({ code }) => code === "rest-of-order").map(({ line }) => line)).toEqual(
		asked,
	);
});

test("a lot comes that was announced, and of which nothing is written down", () => {
	const read = readWorkbook(
		smallUnit({
			"lots.csv": `item,lot,quantity,received_on,arrives_on
				vinegar,A,1,,2027-03-05
				vinegar,B,1,,
				vinegar,C,1,2027-02-01,2027-02-01
				vinegar,D,1,,2027-03-05`,
			"journal.csv": "day,item,lot,entry,quantity\n2027-02-20,vinegar,D,issue,1",
		}),
	);
	expect(lotsOnHand(read).map(isComing)).toEqual([true, false, false, false]);
});
