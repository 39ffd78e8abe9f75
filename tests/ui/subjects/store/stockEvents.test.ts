import { expect, test } from "vitest";
import { stockEvents } from "../../../../src/ui/subjects/store/stockEvents.ts";

/** Three weeks as bars 100 px apart, which words may reach 300 px along. */
const eventsOf = (arrivals: readonly (readonly [string, number])[], runsOutOn = "") =>
	stockEvents(
		{
			stock: ["2027-03-07", "2027-03-14", "2027-03-21"].map((date) => ({ date, usable: 1 })),
			arrivals: arrivals.map(([date, quantity]) => ({ date, quantity })),
			runsOutOn,
		},
		(bar) => 50 + 100 * bar,
		300,
	);

test("what arrives stands over the first bar that counts it, with its day", () => {
	expect(eventsOf([["2027-03-08", 4000]])).toEqual([
		{ date: "2027-03-14", words: "+4\u202f000 Mon 8 Mar", kind: "arrival", isLeft: false, line: 0 },
	]);
	expect(eventsOf([["2027-03-07", 5]])[0]).toMatchObject({ date: "2027-03-07" });
});

test("of several for one bar, all of it and the first day", () => {
	const several = eventsOf([
		["2027-03-12", 20],
		["2027-03-08", 100],
		["2027-03-08", 3],
	]);
	expect(several.map(({ words }) => words)).toEqual(["+123 from Mon 8 Mar"]);
});

test("what lies beyond the last bar is left out, and what never is", () => {
	expect(eventsOf([["2027-03-22", 4000]], "2027-03-22")).toEqual([]);
	expect(eventsOf([])).toEqual([]);
});

test("none stands over another's words: when it runs out too", () => {
	const events = eventsOf(
		[
			["2027-03-01", 4000],
			["2027-03-09", 4000],
		],
		"2027-03-20",
	);
	expect(events.map(({ kind, isLeft, line }) => [kind, isLeft, line])).toEqual([
		["run-out", true, 0],
		["arrival", false, 1],
		["arrival", false, 2],
	]);
});
