import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { keptSince } from "../../../../src/core/plan/store/keptSince.ts";
import { safetyTruths } from "../../../../src/core/plan/today/safetyTruths.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const FIRST = "2027-03-01";
const journal = (day: string) => ({
	"journal.csv": `day,item,lot,entry,quantity,note\n${day},powder,P1,count,10,`,
});
const placed = {
	"placed.csv":
		"ordered_on,item,packs,expected_on,received_on,packs_received,lot,note\n2027-02-03,vinegar,1,,2027-02-10,1,,",
};
const pastPlans = { "past-plans.csv": "date,measure_of,expected,set_aside\n2027-02-22,births,5,9" };

test.each([
	["a new workbook", {}, FIRST],
	["a line of the journal", journal("2027-02-26"), "2027-02-26"],
	["the first day's own count", journal(FIRST), FIRST],
	["an order", placed, "2027-02-03"],
	["a plan kept, and an order before it", { ...placed, ...pastPlans }, "2027-02-03"],
	["a plan kept", pastPlans, "2027-02-22"],
])("%s: since when the store is kept", (_, files, since) => {
	expect(keptSince(readWorkbook(unitWith({}, files)).tables, FIRST)).toBe(since);
});

const store = {
	"lots.csv":
		"item,lot,quantity,made_on,received_on,arrives_on,expires_on\nliquid,L1,6,2027-01-10,2027-02-20,,2027-07-10",
};

test.each([
	["on the first day of a new workbook nothing is late", {}, "Order today.", false],
	["a workbook of one day is late by one at most", journal("2027-02-26"), "Late by 3 days", true],
	["one kept for longer is late by all of them", pastPlans, "Late by 4 days", true],
])("%s", (_, files, words, isLate) => {
	const workbook = unitWith({}, { ...store, ...files });
	const made = plan(workbook);
	const liquid = rowsOf(made, "order.csv").find((row) => valueIn(row.item) === "liquid");
	expect(valueIn(liquid?.order_by)).toBe("2027-02-25");
	expect(valueIn(liquid?.remark)).toContain(words);
	const late = safetyTruths(made, readWorkbook(workbook), FIRST).find(
		({ kind }) => kind === "late",
	);
	expect(late?.problems.some(({ message }) => message.startsWith("liquid")) ?? false).toBe(isLate);
});
