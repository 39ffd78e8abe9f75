import { expect, test } from "vitest";
import { orderRemark } from "../../../../src/core/plan/store/orderRemark.ts";
import type { ProjectedLot } from "../../../../src/core/stock/projection.ts";
import { answerOf } from "../../answerOf.ts";

type Inputs = (typeof orderRemark)["example"]["inputs"];

/** Enough of it, counted lately: nothing to say. */
const calm: Inputs = {
	...orderRemark.example.inputs,
	projection: { stock: [200, 190], runOut: null, waste: [] },
	orderBy: "2027-03-20",
};
const runsOut = { stock: [20, 10, 0], runOut: 3, waste: [] };
const lost = (day: number, why: "out of date" | "too weak for the strength wanted") => ({
	...calm.projection,
	waste: [{ lot: "A", day, quantity: 2.26, why }],
});

const lot = (from: number, quantity: number): ProjectedLot => ({
	name: "A",
	quantity,
	from,
	last: Number.POSITIVE_INFINITY,
	ends: "out of date",
	perUnit: () => 1,
});

test.each<[string, Partial<Inputs>, string]>([
	["all is well", {}, ""],
	["no day to order by is no day in the past", { orderBy: "" }, ""],
	["nothing to order is not late", { packs: 0, orderBy: "2027-02-20" }, ""],
	["the day to order is today", { orderBy: "2027-03-01" }, ""],
	["it was yesterday", { orderBy: "2027-02-28" }, "Late by 1 day: order today."],
	["ten days ago", { orderBy: "2027-02-19" }, "Late by 10 days: order today."],
	[
		"before anybody planned by this workbook: since then",
		{ orderBy: "2027-02-19", knownSince: "2027-02-25" },
		"Late by 4 days: order today.",
	],
	[
		"before its first day, which is today",
		{ orderBy: "2027-02-19", knownSince: "2027-03-01" },
		"Order today.",
	],
	[
		"runs out before an order comes, which is late: two sentences",
		{ projection: runsOut, orderBy: "2027-02-26" },
		"Runs out on 2027-03-04, before an order can arrive: find some elsewhere. Late by 3 days: order today.",
	],
	["runs out the day an order comes", { projection: { ...runsOut, runOut: 7 } }, ""],
	[
		"overdue",
		{ overdue: 12.34 },
		"Of what is on the way, 12.3 is overdue: ask where it is. It is in no day's stock until it is received.",
	],
	[
		"comes when the next order could: how much, and the first of it when",
		{ lots: [lot(10, 4), lot(14, 900), lot(12, 100.04), lot(9, 7), lot(0, 50)], windowDays: 10 },
		"Of what is on the way, 1004 comes only from 2027-03-11 on, when the next order could be here too: it is not taken off this order.",
	],
	["nothing is ordered", { lots: [lot(14, 900)], windowDays: 10, packs: 0 }, ""],
	["comes the day before", { lots: [lot(9, 7)], windowDays: 10 }, ""],
	["comes late and out of date", { lots: [{ ...lot(20, 7), last: 19 }], windowDays: 10 }, ""],
	["nothing of it comes late", { lots: [lot(20, 0)], windowDays: 10 }, ""],
	["counted too long ago", { notCountedDays: 32 }, "Last counted 32 days ago: count it."],
	[
		"goes out of date",
		{ projection: lost(2, "out of date") },
		"Lot A: 2.3 unused and out of date on 2027-03-03.",
	],
	[
		"is out of date",
		{ projection: lost(0, "out of date") },
		"Lot A: 2.3 unused and out of date already.",
	],
	[
		"gets too weak",
		{ projection: lost(2, "too weak for the strength wanted") },
		"Lot A: 2.3 unused and too weak for the strength wanted on 2027-03-03.",
	],
	[
		"is too weak",
		{ projection: lost(0, "too weak for the strength wanted") },
		"Lot A: 2.3 unused and too weak for the strength wanted already.",
	],
	// 30 here, 20 on the way, 100 ordered: 15 days at 100 in 10 days.
	["lasts as long as it keeps", { onOrder: 20, keepsDays: 15 }, ""],
	[
		"lasts a day longer",
		{ onOrder: 20, keepsDays: 14 },
		"The order would last 15 days and keeps for 14: order less and more often, or a smaller pack.",
	],
	["nothing ordered outlasts nothing", { packs: 0, keepsDays: 1 }, ""],
	["nothing used", { use: 0, keepsDays: 1 }, ""],
])("%s", (_what, of, words) => {
	expect(answerOf(orderRemark, { ...calm, ...of })).toBe(words);
});
