import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { answerOf } from "../../answerOf.ts";
import { calculationsBehind, rowsOf } from "../../planCells.ts";
import { smallUnit } from "../../smallUnit.ts";

const [row] = rowsOf(plan(smallUnit()), "order.csv");
const behind = [...calculationsBehind(row?.remark as never)];

/** A calculation behind an order, asked as its example is but for what is given. */
function asked(key: string, change: object): unknown {
	const found = behind.find((each) => each.key === key);
	if (!found?.example) expect.fail(`nothing goes by ${key}`);
	return answerOf(found, { ...found.example.inputs, ...change });
}

// 30, 20, 10 and 0 are left; the reserve is 15, and 7 days pass until a delivery.
test.each([
	["below the reserve on the third day", {}, "2027-02-24"],
	["just the reserve on the second", { target: 45 }, "2027-02-24"],
	["what is overdue covers it that day", { overdue: 5 }, "2027-02-25"],
	["all of it", { overdue: 15 }, ""],
	["what is on the way comes on that day", { nextDelivery: 2 }, "2027-02-24"],
	["or a day later", { nextDelivery: 3 }, "2027-02-25"],
	[
		"it runs out before",
		{ projection: { stock: [30, 20, 10, 0], runOut: 1, waste: [] } },
		"2027-02-23",
	],
	["more is used than is to be in stock", { use: 50 }, ""],
])("order by: %s", (_, change, day) => {
	expect(asked("order_by", change)).toBe(day);
});

const lot = { name: "C", quantity: 10, from: 3, last: 100, ends: "out of date", perUnit: () => 1 };
const none = { stock: [], runOut: null, waste: [] };
test.each([
	["comes within the window", {}, 10],
	["is here already", { from: 0 }, 0],
	["comes as the next order does", { from: 7 }, 0],
	["can be used on the day it comes", { last: 3 }, 10],
	["is out of date by then", { last: 2 }, 0],
])("on the way: a lot that %s", (_, change, quantity) => {
	const inputs = { lots: [{ ...lot, ...change }], projection: none, windowDays: 7, overdue: 0 };
	expect(asked("on_order", inputs)).toBe(quantity);
});
