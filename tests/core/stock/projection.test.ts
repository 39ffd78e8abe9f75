import { describe, expect, test } from "vitest";
import { type ProjectedLot, project } from "../../../src/core/stock/projection.ts";
import { expectWithin } from "../../expectWithin.ts";

const lot = (name: string, quantity: number, change: Partial<ProjectedLot> = {}): ProjectedLot => ({
	name,
	quantity,
	from: 0,
	last: Number.POSITIVE_INFINITY,
	ends: "out of date",
	perUnit: () => 1,
	...change,
});
const each = (units: number, days: number) => new Array<number>(days).fill(units);

describe("stock day by day", () => {
	test.each<[string, ProjectedLot[], number[], number[], number | null]>([
		["no lots, nothing asked", [], [0, 0], [0, 0], null],
		["no lots", [], [1, 1], [0, 0], 0],
		["one lot, just enough", [lot("A", 6)], each(2, 3), [4, 2, 0], null],
		["one lot, a day short", [lot("A", 6)], each(2, 4), [4, 2, 0, 0], 3],
		["a part of a day's use is not enough", [lot("A", 5)], each(2, 3), [3, 1, 0], 2],
		["nothing asked on some days", [lot("A", 3)], [0, 3, 0, 1], [3, 0, 0, 0], 3],
		[
			"a lot on its way counts from its day",
			[lot("A", 5, { from: 2 })],
			each(1, 4),
			[0, 0, 4, 3],
			0,
		],
		[
			"a lot that comes just in time",
			[lot("A", 2), lot("B", 5, { from: 2 })],
			each(1, 4),
			[1, 0, 4, 3],
			null,
		],
		["used on its last day", [lot("A", 9, { last: 1 })], each(1, 3), [8, 7, 0], 2],
		["out of date before the first day", [lot("A", 9, { last: -1 })], each(1, 2), [0, 0], 0],
		["thirds that add up to a whole", [lot("A", 0.3)], each(0.1, 3), [0.2, 0.1, 0], null],
	])("%s", (_what, lots, demand, stock, runOut) => {
		const found = project(lots, demand);
		expect(found.stock).toHaveLength(stock.length);
		stock.forEach((left, day) => {
			expectWithin(found.stock[day], left, 1e-12, `pieces on day ${day}`);
		});
		expect(found.runOut).toBe(runOut);
	});
});

test("what is large and used up to the last does not run out for the rounding of its days", () => {
	// Ninety times a ninetieth of a million, taken off one after the other, leaves 1e-9 of a piece.
	expect(project([lot("A", 1e6)], each(1e6 / 90, 90)).runOut).toBe(null);
});

describe("waste", () => {
	const early = lot("early", 4, { last: 2 });
	const late = lot("late", 10, { last: 9 });
	test.each<[string, ProjectedLot[], number[], [string, number, number][]]>([
		["first expired first out leaves none", [early, late], each(2, 5), []],
		["however the lots are listed", [late, early], each(2, 5), []],
		["the day after the last day", [early], each(1, 9), [["early", 3, 1]]],
		["already out of date", [lot("old", 7, { last: -20 })], each(1, 3), [["old", 0, 7]]],
		["a lot used up is none", [lot("A", 3, { last: 2 })], each(1, 9), []],
		["an empty lot is none", [lot("A", 0, { last: 0 })], each(1, 9), []],
		[
			"both, where little is used",
			[late, early],
			each(0.5, 12),
			[
				["early", 3, 2.5],
				["late", 10, 6.5],
			],
		],
		[
			"a lot on its way that expires first leaves first once it is there",
			[lot("here", 3, { last: 6 }), lot("coming", 2, { from: 1, last: 2 })],
			each(1, 8),
			[],
		],
		[
			"a lot without end waits for those with one",
			[lot("endless", 5), lot("ending", 3, { last: 2 })],
			each(1, 4),
			[],
		],
		["beyond the days looked at, nothing is said", [early], each(1, 3), []],
	])("%s", (_what, lots, demand, waste) => {
		const found = project(lots, demand).waste;
		expect(found.map(({ lot: name, day }) => [name, day])).toEqual(
			waste.map(([name, day]) => [name, day]),
		);
		waste.forEach(([, , quantity], i) => {
			expectWithin(found[i]?.quantity, quantity, 1e-12, "pieces");
		});
	});

	test("says why: each lot its own reason", () => {
		const weak = lot("weak", 5, { last: 0, ends: "too weak for the strength wanted" });
		expect(project([lot("old", 5, { last: 1 }), weak], each(1, 4)).waste.map((w) => w.why)).toEqual(
			["too weak for the strength wanted", "out of date"],
		);
	});
});

describe("a lot that fades", () => {
	test("takes more of it for the same use, day by day", () => {
		const fading = lot("A", 10, { perUnit: (day) => 1 + day });
		const found = project([fading], each(1, 5));
		expect(found.stock).toEqual([9, 7, 4, 0, 0]);
		expect(found.runOut).toBe(4);
	});

	test("what one lot cannot give the next gives at its own strength", () => {
		const weak = lot("weak", 3, { last: 5, perUnit: () => 2 });
		const strong = lot("strong", 10, { last: 9 });
		// 3 of the weak lot are one and a half units; the strong lot gives the half.
		expect(project([weak, strong], [2, 1]).stock).toEqual([9.5, 8.5]);
	});
});
