import { describe, expect, test } from "vitest";
import { contentOf } from "../../contentOf.ts";
import { orderOf, planOfStore, type Store } from "../oneItem.ts";

const advised = (store: Store) =>
	planOfStore(store)
		.problems.filter(({ code }) => code === "count-too-old")
		.map(({ file, line, received }) => `${file} ${line} ${received}`);

const PRODUCT = "product,form,strength,strength_measure,in_use\nsoap,liquid,3.5,pct_w_v,yes";

/** The plan begins on 2027-03-01; 29 January is 31 days before. */
describe("how old the last count is", () => {
	test.each<[string, Store, string, string[]]>([
		["counted 31 days ago", { lots: ["S1 5 - 2027-01-29 - -"] }, "2027-01-29", []],
		[
			"counted 32 days ago",
			{ lots: ["S1 5 - 2027-01-28 - -"] },
			"2027-01-28",
			["lots.csv 2 2027-01-28"],
		],
		[
			"counted since it came",
			{ lots: ["S1 5 - 2026-01-28 - -"], journal: ["2027-02-20,soap,S1,count,4,"] },
			"2027-02-20",
			[],
		],
		[
			"an issue is no count",
			{ lots: ["S1 5 - 2026-12-31 - -"], journal: ["2027-02-20,soap,S1,issue,1,"] },
			"2026-12-31",
			["lots.csv 2 2026-12-31"],
		],
		[
			"said once, for the lot counted longest ago",
			{ lots: ["S1 5 - 2027-01-02 - -", "S2 5 - 2027-01-01 - -", "S3 5 - 2027-02-20 - -"] },
			"2027-01-01",
			["lots.csv 3 2027-01-01"],
		],
		["the plan does not use it", { lots: ["S1 5 - 2027-01-01 - -"], usage: [] }, "2027-01-01", []],
		[
			"no line says how much goes, but it is the product in use",
			{
				lots: ["S1 5 - 2027-01-01 - -"],
				usage: [],
				files: { "chlorine.csv": PRODUCT },
			},
			"2027-01-01",
			["lots.csv 2 2027-01-01"],
		],
		[
			"no line says how much goes, and it is not the product in use",
			{
				lots: ["S1 5 - 2027-01-01 - -"],
				usage: [],
				files: { "chlorine.csv": PRODUCT.replace(/yes$/, "no") },
			},
			"2027-01-01",
			[],
		],
		["used up", { lots: ["S1 0 - 2026-01-28 - -"] }, "", []],
		["on its way", { lots: ["S1 5 - - 2027-03-05 -"] }, "", []],
		["nothing says when", { lots: ["S1 5 - - - -"] }, "", []],
		[
			"the unit counts every week",
			{ lots: ["S1 5 - 2027-02-21 - -"], settings: { count_every_days: 7 } },
			"2027-02-21",
			["lots.csv 2 2027-02-21"],
		],
	])("%s", (_what, store, day, problems) => {
		expect(orderOf(planOfStore(store), "last_counted")).toEqual([day]);
		expect(advised(store)).toEqual(problems);
	});

	test("stands beside the lot and in the order's remark", () => {
		const made = planOfStore({ lots: ["S1 500 - 2027-01-20 - -", "S2 5 - - - -"] });
		expect(contentOf(made, "stock.csv", "lot", "last_counted", "counted_days_ago")).toEqual([
			["S1", "2027-01-20", 40],
			["S2", "", null],
		]);
		expect(orderOf(made, "remark")).toEqual(["Last counted 40 days ago: count it."]);
	});
});
