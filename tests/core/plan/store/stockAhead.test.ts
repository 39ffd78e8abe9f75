import { describe, expect, test } from "vitest";
import { addDays } from "../../../../src/core/values/date.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { contentOf } from "../../contentOf.ts";
import { planOfStore, type Store } from "../oneItem.ts";

const ahead = (store: Store) =>
	contentOf(planOfStore(store), "stock-ahead.csv", "item", "date", "usable", "reserve")
		.filter(([item]) => item === "soap")
		.map(([, ...rest]) => rest);
const weeks = (count: number) => ({ stock_horizon_days: count * 7 });

describe("stock at the end of each week", () => {
	test.each<[string, Store, unknown[][]]>([
		[
			"fourteen bars a week",
			{ lots: ["S1 60 - - - -"], settings: weeks(5) },
			[
				["2027-03-07", 46, 0],
				["2027-03-14", 32, 0],
				["2027-03-21", 18, 0],
				["2027-03-28", 4, 0],
				["2027-04-04", 0, 0],
			],
		],
		[
			"a delivery and an expiry",
			{ lots: ["S1 30 - - - 2027-03-10", "S2 40 - - 2027-03-09 -"], settings: weeks(3) },
			[
				["2027-03-07", 16, 0],
				["2027-03-14", 32, 0],
				["2027-03-21", 18, 0],
			],
		],
		[
			"half is wasted: twice as much leaves, and wastage alone keeps no reserve",
			{ lots: ["S1 60 - - - -"], wastagePct: 50, settings: weeks(3) },
			[
				["2027-03-07", 32, 0],
				["2027-03-14", 4, 0],
				["2027-03-21", 0, 0],
			],
		],
		[
			"an empty store",
			{ settings: weeks(3) },
			["2027-03-07", "2027-03-14", "2027-03-21"].map((day) => [day, 0, 0]),
		],
	])("%s", (_what, store, rows) => {
		expect(ahead(store)).toEqual(rows);
	});

	test("a year ahead: 52 weeks, every figure a number", () => {
		const rows = ahead({ lots: ["S1 5000 - - - -"], settings: { stock_horizon_days: 366 } });
		expect(rows).toHaveLength(52);
		rows.forEach(([date, usable], week) => {
			expect([date, usable]).toEqual([addDays("2027-03-01", 7 * week + 6), 5000 - 14 * (week + 1)]);
		});
	});

	test("a part of a week at the end is not shown", () => {
		expect(ahead({ settings: { stock_horizon_days: 27 } })).toHaveLength(3);
	});
});

test("the reserve is what the target has above average use, wastage in both", () => {
	// As without wastage, ÷ (1 − 0.2): contract, calculations.md 8.
	const reserve = (wastagePct: number) => {
		const made = planOfStore({ usage: ["soap,kit,3,"], wastagePct, settings: weeks(1) });
		return Number(
			contentOf(made, "stock-ahead.csv", "item", "reserve").find(([item]) => item === "soap")?.[1],
		);
	};
	expect(reserve(0)).toBeGreaterThan(0);
	expectWithin(reserve(20), reserve(0) / 0.8, 1e-9, "bars");
});

test("of a chlorine product goes what the rounds take of it, wastage included", () => {
	const made = planOfStore({
		settings: weeks(2),
		files: {
			"lots.csv":
				"item,lot,quantity,made_on,received_on,arrives_on,expires_on\nliquid,L1,10,2027-01-10,2027-01-20,,",
		},
	});
	const of = (file: string, column: string) =>
		contentOf(made, file, "item", column).find(([item]) => item === "liquid")?.[1] as number;
	// A tenth is wasted.
	const week = of("supply-use.csv", "expected") / 0.9;
	expect(week).toBeGreaterThan(1);
	expectWithin(of("stock-ahead.csv", "usable"), 10 - week, 1e-9, "L");
});
