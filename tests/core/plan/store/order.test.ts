import { describe, expect, test } from "vitest";
import { expectWithin } from "../../../expectWithin.ts";
import { codesOf, rowsOf, valueIn } from "../../planCells.ts";
import { orderOf, planOfStore, type Store } from "../oneItem.ts";

const dates = (of: Store) => orderOf(planOfStore(of), "run_out_on", "order_by");
const remark = (of: Store) => String(orderOf(planOfStore(of), "remark")[0]);
/** Kept with the workbook for ten days: an order can have been late. */
const KEPT = { "past-plans.csv": "date,measure_of,expected,set_aside\n2027-02-19,births,1,2\n" };
const from = (plan_start: string) => ({ settings: { plan_start } });

describe("two bars a day, seven days to delivery, seven between orders", () => {
	test.each<[string, Store, number[]]>([
		["an empty store", {}, [0, 0, 28, 3]],
		["half of it here", { lots: ["S1 14 - - - -"] }, [14, 0, 28, 2]],
		["here and on its way", { lots: ["S1 14 - - - -", "S2 9 - - 2027-03-03 -"] }, [14, 9, 28, 1]],
		["exactly enough", { lots: ["S1 28 - - - -"] }, [28, 0, 28, 0]],
		["far more than enough", { lots: ["S1 500 - - - -"] }, [500, 0, 28, 0]],
		["a fifth is wasted", { wastagePct: 20 }, [0, 0, 35, 4]],
		["packs of one", { packSize: 1, lots: ["S1 5 - - - -"] }, [5, 0, 28, 23]],
		["longer delivery", { leadDays: 30 }, [0, 0, 74, 8]],
		["a part of a day is a day", { leadDays: 6.5 }, [0, 0, 28, 3]],
		["orders every day", { leadDays: 0, settings: { review_days: 1 } }, [0, 0, 2, 1]],
		["out of date yesterday", { lots: ["S1 50 - - - 2027-02-28"] }, [0, 0, 28, 3]],
		["out of date tonight", { lots: ["S1 50 - - - 2027-03-01"] }, [2, 0, 28, 3]],
		["part of a lot goes out of date unused", { lots: ["S1 20 - - - 2027-03-05"] }, [10, 0, 28, 2]],
		[
			"the lot that ends first is used first",
			{
				lots: ["S1 20 - - - 2027-12-31", "S2 10 - - - 2027-03-05"],
			},
			[30, 0, 28, 0],
		],
		[
			"what goes out of date after the next order comes is usable",
			{ lots: ["S1 100 - - - 2027-03-20"] },
			[100, 0, 28, 0],
		],
		[
			"what is on its way goes out of date, the one here does not",
			{ lots: ["S1 100 - - - -", "S2 90 - - 2027-03-03 2027-03-04"] },
			[100, 4, 28, 0],
		],
		[
			"the one here goes out of date, what is on its way does not",
			{ lots: ["S1 100 - - - 2027-03-04", "S2 90 - - 2027-03-03 -"] },
			[8, 90, 28, 0],
		],
		["due on the first day", { lots: ["S1 90 - - 2027-03-01 -"] }, [90, 0, 28, 0]],
		["due the day before", { lots: ["S1 90 - - 2027-02-28 -"] }, [0, 90, 28, 0]],
		// calculations 8, "a lot past expiry is waste": it takes nothing off an order although it never came.
		[
			"due long ago, its last day is the first",
			{ lots: ["S1 90 - - 2026-12-01 2027-03-01"] },
			[0, 90, 28, 0],
		],
		[
			"due long ago, and out of date yesterday",
			{ lots: ["S1 90 - - 2026-12-01 2027-02-28"] },
			[0, 0, 28, 3],
		],
		["nothing is used", { usage: ["soap,day,0,"] }, [0, 0, 0, 0]],
	])("%s", (_what, store, expected) => {
		const found = orderOf(planOfStore(store), "usable", "on_order", "target_stock", "order_packs");
		expected.forEach((number, i) => {
			expectWithin(found[i] as number, number, 1e-9, "bars or packs");
		});
	});

	test.each<[string, Store, number[]]>([
		["arrives on the last day that counts", { lots: ["S1 90 - - 2027-03-14 -"] }, [90, 0]],
		["arrives after the next order would", { lots: ["S1 90 - - 2027-03-15 -"] }, [0, 3]],
		["arrives in three months", { lots: ["S1 90 - - 2027-06-01 -"] }, [0, 3]],
		["arrives, and most goes out of date", { lots: ["S1 90 - - 2027-03-03 2027-03-04"] }, [4, 3]],
		["arrives out of date", { lots: ["S1 90 - - 2027-03-03 2027-03-02"] }, [0, 3]],
	])("on order, %s", (_what, store, expected) => {
		expect(orderOf(planOfStore(store), "on_order", "order_packs")).toEqual(expected);
	});

	test("what comes when the next order could is not taken off, and the remark tells of it", () => {
		const store = { lots: ["S1 14 - - - -", "S2 1000 - - 2027-03-20 -"] };
		expect(orderOf(planOfStore(store), "on_order", "order_packs", "remark")).toEqual([
			0,
			2,
			"Of what is on the way, 1000 comes only from 2027-03-20 on, when the next order could be here too: it is not taken off this order.",
		]);
	});

	test("quantity and cost follow from the packs; months from the mean use", () => {
		const row = orderOf(
			planOfStore({ lots: ["S1 15.2 - - - -"] }),
			"order_quantity",
			"cost",
			"months_of_stock",
			"use_expected",
		) as number[];
		[20, 10, 0.25, 28].forEach((number, i) => {
			expectWithin(row[i], number, 1e-9, "");
		});
	});

	test("half is wasted: stock lasts half as many months, and the use itself is as it was", () => {
		const store = { lots: ["S1 15.2 - - - -"], wastagePct: 50 };
		const row = orderOf(planOfStore(store), "months_of_stock", "use_expected") as number[];
		expectWithin(row[0], 0.125, 1e-9, "months");
		expectWithin(row[1], 28, 1e-9, "bars");
	});

	test("half is wasted: what is taken lasts half as long", () => {
		// Four leave a day: eleven days of them are here, and four packs of ten make it 21.
		const store = { lots: ["S1 44 - - - -"], wastagePct: 50, settings: { review_days: 14 } };
		const row = orderOf(planOfStore(store), "order_packs", "run_out_on", "full_run_out_on");
		expect(row).toEqual([4, "2027-03-12", "2027-03-22"]);
	});

	test("without a price no cost; without use no months", () => {
		expect(orderOf(planOfStore({ price: "" }), "cost", "pack_price")).toEqual([null, null]);
		expect(orderOf(planOfStore({ usage: ["soap,day,0,"] }), "months_of_stock")).toEqual([null]);
	});

	// workbook-format.md: a bad cell is a problem; a hole is never a number.
	test("days between orders that nobody can read leave blank what goes by them, and no more", () => {
		const made = planOfStore({ lots: ["S1 60 - - - -"], settings: { review_days: "abc" } });
		const by = ["use_expected", "target_stock", "usable", "on_order", "order_packs", "order_by"];
		for (const item of ["soap", "liquid"]) {
			const row = rowsOf(made, "order.csv").find((each) => valueIn(each.item) === item);
			expect(by.map((column) => codesOf(row?.[column]))).toEqual(by.map(() => ["bad-cell"]));
		}
		expect(orderOf(made, "run_out_on")).toEqual(["2027-03-31"]);
	});
});

describe("dates", () => {
	test.each<[string, Store, string, string]>([
		["sixty bars last thirty days", { lots: ["S1 60 - - - -"] }, "2027-03-31", "2027-03-24"],
		["over a month's end", { lots: ["S1 62 - - - -"] }, "2027-04-01", "2027-03-25"],
		[
			"over the end of a February",
			{ lots: ["S1 40 - - - -"], ...from("2027-02-15") },
			"2027-03-07",
			"2027-02-28",
		],
		[
			"over the end of a leap year's February",
			{ lots: ["S1 40 - - - -"], ...from("2028-02-15") },
			"2028-03-06",
			"2028-02-28",
		],
		[
			"over the end of a year",
			{ lots: ["S1 40 - - - -"], ...from("2027-12-25") },
			"2028-01-14",
			"2028-01-07",
		],
		[
			"half is wasted: sixty bars last fifteen days",
			{ lots: ["S1 60 - - - -"], wastagePct: 50 },
			"2027-03-16",
			"2027-03-09",
		],
		["a slow delivery", { lots: ["S1 60 - - - -"], leadDays: 29 }, "2027-03-31", "2027-03-02"],
		[
			"a part of a day: the earlier day",
			{ lots: ["S1 60 - - - -"], leadDays: 6.5 },
			"2027-03-31",
			"2027-03-24",
		],
		["delivery the same day", { lots: ["S1 60 - - - -"], leadDays: 0 }, "2027-03-31", "2027-03-31"],
		["an odd bar is not a day's use", { lots: ["S1 61 - - - -"] }, "2027-03-31", "2027-03-24"],
		[
			"a delivery carries it on",
			{ lots: ["S1 10 - - - -", "S2 10 - - 2027-03-06 -"] },
			"2027-03-11",
			"2027-03-04",
		],
		[
			"a delivery that comes too late",
			{ lots: ["S1 10 - - - -", "S2 10 - - 2027-03-08 -"] },
			"2027-03-06",
			"2027-02-27",
		],
		["expiry ends it early", { lots: ["S1 60 - - - 2027-03-10"] }, "2027-03-11", "2027-03-04"],
		["beyond the days looked at", { lots: ["S1 900 - - - -"] }, "", ""],
		["nothing is used", { usage: ["soap,day,0,"] }, "", ""],
	])("%s", (_what, store, runOut, orderBy) => {
		expect(dates(store)).toEqual([runOut, orderBy]);
	});
});

describe("remarks", () => {
	test.each<[string, Store, RegExp]>([
		["all is well", { lots: ["S1 60 - - - -"] }, /^$/],
		[
			"runs out before an order can arrive",
			{ lots: ["S1 8 - - - -"], files: KEPT },
			/^Runs out on 2027-03-05, before an order can arrive: find some elsewhere\. Late by 3 days: order today\.$/,
		],
		["runs out the day an order arrives: order today, not late", { lots: ["S1 14 - - - -"] }, /^$/],
		[
			"late though nothing runs out yet",
			{ lots: ["S1 30 - - - -"], usage: ["soap,kit,3,"], files: KEPT },
			/^Late by 1 day: order today\.$/,
		],
		[
			"late, but enough is on its way",
			{ lots: ["S1 30 - - - -", "S2 90 - - 2027-03-02 -"], usage: ["soap,kit,3,"], files: KEPT },
			/^$/,
		],
		[
			"goes out of date unused",
			{ lots: ["S1 60 - - - 2027-03-10", "S2 90 - - - -"] },
			/^Lot S1: 40 unused and out of date on 2027-03-11\.$/,
		],
		[
			"is out of date",
			{ lots: ["S1 60 - - - 2027-02-10", "S2 90 - - - -"] },
			/^Lot S1: 60 unused and out of date already\.$/,
		],
		[
			"the order outlasts what a new lot keeps",
			{ packSize: 500, keepsDays: 100, lots: ["S1 20 - - - -"] },
			/The order would last 260 days and keeps for 100: order less and more often, or a smaller pack\.$/,
		],
		["keeps just long enough", { packSize: 500, keepsDays: 260, lots: ["S1 20 - - - -"] }, /^$/],
		["it does not matter how long it keeps", { packSize: 500, lots: ["S1 20 - - - -"] }, /^$/],
		["nothing ordered outlasts nothing", { lots: ["S1 600 - - - -"], keepsDays: 30 }, /^$/],
	])("%s", (_what, store, words) => {
		expect(remark(store)).toMatch(words);
	});

	test.each<[Store, string]>([
		[{ lots: ["S1 13 - - - -"] }, "yes"],
		[{ lots: ["S1 14 - - - -"] }, "no"],
		[{ lots: ["S1 10 - - - -", "S2 9 - - 2027-03-06 -"] }, "no"],
		[{ lots: ["S1 10 - - - -", "S2 9 - - 2027-03-07 -"] }, "yes"],
		[{ leadDays: 0, lots: ["S1 1 - - - -"] }, "no"],
		[{ lots: ["S1 27 - - - -"], wastagePct: 50 }, "yes"],
		[{ lots: ["S1 28 - - - -"], wastagePct: 50 }, "no"],
	])("emergency of %j: %s", (store, word) => {
		expect(orderOf(planOfStore(store), "emergency")).toEqual([word]);
	});
});
