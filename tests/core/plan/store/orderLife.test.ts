import { describe, expect, test } from "vitest";
import { orderOf, planOfStore, type Store } from "../oneItem.ts";

const HEADER = "ordered_on,item,packs,expected_on,received_on,packs_received,lot,note";

/** Two bars go each day; lead 7 days, 7 between orders, so 28 bars are wanted; packs of 10. The plan begins on 2027-03-01. */
const withOrders = (orders: readonly string[], of: Store = {}) =>
	planOfStore({ ...of, files: { "placed.csv": [HEADER, ...orders].join("\n"), ...of.files } });

describe("what is on its way counts as on order", () => {
	test.each<[string, string[], Store, unknown[]]>([
		// Wanted 28, on order 20, so 8 more: one pack.
		["two packs", ["2027-02-25,soap,2,,,,,"], {}, [0, 20, 1]],
		["as much as is wanted", ["2027-02-25,soap,3,,,,,"], {}, [0, 30, 0]],
		["given up", ["2027-02-25,soap,0,,,,,"], {}, [0, 0, 3]],
		["received: it counts as its lot does", ["2027-02-20,soap,3,,2027-02-26,3,S1,"], {}, [0, 0, 3]],
		[
			"received, and its lot listed",
			["2027-02-20,soap,3,,2027-02-26,,S1,"],
			{ lots: ["S1 30 - 2027-02-26 - -"] },
			[30, 0, 0],
		],
		[
			"expected after the next order would come",
			["2027-02-25,soap,3,2027-03-15,,,,"],
			{},
			[0, 0, 3],
		],
		["expected on the last day that counts", ["2027-02-25,soap,3,2027-03-14,,,,"], {}, [0, 30, 0]],
		[
			"expected today: not here before somebody says so",
			["2027-02-22,soap,3,,,,,"],
			{},
			[0, 30, 0],
		],
		["its day has passed: on order all the same", ["2027-02-01,soap,3,,,,,"], {}, [0, 30, 0]],
		[
			"beside a lot that is announced and one in the store",
			["2027-02-25,soap,1,,,,,"],
			{ lots: ["S1 5 - - - -", "S2 4 - - 2027-03-03 -"] },
			[5, 14, 1],
		],
		["of a lot whose day has passed", [], { lots: ["S1 30 - - 2027-02-28 -"] }, [0, 30, 0]],
		["of a lot that came", [], { lots: ["S1 30 - 2027-02-28 2027-02-28 -"] }, [30, 0, 0]],
		[
			"of a lot that was counted since",
			[],
			{ lots: ["S1 30 - - 2027-02-27 -"], journal: ["2027-02-28,soap,S1,count,28,"] },
			[28, 0, 0],
		],
		// Arrives on 2 March and keeps for 5 days: until 7 March, in which time 12 are used; of 30, 12 count.
		["it keeps for five days", ["2027-02-23,soap,3,,,,,"], { keepsDays: 5 }, [0, 12, 2]],
	])("%s", (_what, orders, store, expected) => {
		const made = withOrders(orders, store);
		expect(orderOf(made, "usable", "on_order", "order_packs")).toEqual(expected);
	});

	test("what is on its way is not called late", () => {
		// Ten bars last to 5 March, the order comes on the 4th; 40 bars are gone by 20 March, and an order takes 7 days.
		const made = withOrders(["2027-02-25,soap,3,,,,,"], { lots: ["S1 10 - - - -"] });
		expect(orderOf(made, "order_packs", "order_by", "remark", "emergency")).toEqual([
			0,
			"2027-03-14",
			"",
			"no",
		]);
	});

	test("a day that nothing covers is not waited out", () => {
		// Nothing is here on 1 March, ten come on the 4th; 28 are wanted, so two packs more, due a lead of 7 days before.
		const made = withOrders(["2027-02-25,soap,1,,,,,"]);
		expect(orderOf(made, "order_packs", "run_out_on", "order_by", "emergency")).toEqual([
			2,
			"2027-03-01",
			"2027-02-22",
			"yes",
		]);
	});

	test("an order that is overdue keeps no day's stock up, and is asked about", () => {
		const made = withOrders(["2027-02-10,soap,3,,,,,"], { lots: ["S1 10 - - - -"] });
		const [packs, runOut, emergency, remark] = orderOf(
			made,
			"order_packs",
			"run_out_on",
			"emergency",
			"remark",
		);
		expect([packs, runOut, emergency]).toEqual([0, "2027-03-06", "yes"]);
		expect(remark).toContain("30 is overdue");
		expect(remark).not.toContain("Late");
	});
});

describe("what cannot be right about an order", () => {
	const lots = ["S1 30 - 2027-02-26 - -"];
	test.each<[string, string[], string, string, string]>([
		["an unknown item", ["2027-02-20,sop,3,,,,,"], "unknown-item", "item", "error"],
		[
			"received before it was ordered",
			["2027-02-20,soap,3,,2027-02-19,,S1,"],
			"received-before-ordered",
			"received_on",
			"error",
		],
		[
			"expected before it was ordered",
			["2027-03-02,soap,3,2027-03-01,,,,"],
			"expected-before-ordered",
			"expected_on",
			"error",
		],
		[
			"received in the future",
			["2027-02-20,soap,3,,2027-03-08,,S1,"],
			"record-in-future",
			"received_on",
			"error",
		],
		[
			"packs and no day",
			["2027-02-26,soap,3,,,2,S1,"],
			"received-without-day",
			"received_on",
			"error",
		],
		[
			"given up and received",
			["2027-02-20,soap,0,,2027-02-26,,S1,"],
			"received-and-given-up",
			"packs",
			"error",
		],
		[
			"a lot that is not listed",
			["2027-02-20,soap,3,,2027-02-26,,S9,"],
			"received-without-lot",
			"lot",
			"error",
		],
		["no lot at all", ["2027-02-20,soap,3,,2027-02-26,,,"], "received-without-lot", "lot", "error"],
		[
			"less than was ordered",
			["2027-02-20,soap,3,,2027-02-26,2,S1,"],
			"rest-of-order",
			"packs_received",
			"advice",
		],
		["its day has passed", ["2027-02-20,soap,3,,,,,"], "delivery-overdue", "expected_on", "advice"],
	])("%s", (_what, orders, code, column, weight) => {
		const said = withOrders(orders, { lots }).problems.filter(({ file }) => file === "placed.csv");
		expect(said).toMatchObject([{ code, column, weight, line: 2 }]);
	});

	test("the same order received twice is said at the second", () => {
		const twice = "2027-02-20,soap,3,,2027-02-26,3,S1,";
		const said = withOrders([twice, twice], { lots }).problems;
		expect(said.filter(({ file }) => file === "placed.csv")).toMatchObject([
			{ code: "order-received-twice", line: 3 },
		]);
	});

	test("a rest that has a line of its own is on its way and not asked about", () => {
		const made = withOrders(["2027-02-26,soap,3,,2027-02-28,2,S1,", "2027-02-26,soap,1,,,,,"], {
			lots,
		});
		expect(made.problems.filter(({ file }) => file === "placed.csv")).toEqual([]);
		expect(orderOf(made, "on_order")).toEqual([10]);
	});

	test("a lot whose day has passed is asked about once, at the lot", () => {
		const made = planOfStore({ lots: ["S1 30 - - 2027-02-28 -"] });
		expect(made.problems.filter(({ code }) => code === "delivery-overdue")).toMatchObject([
			{ file: "lots.csv", line: 2, column: "arrives_on" },
		]);
	});
});

test("what goes out of date on the day on which the next order comes in is no stock by then, a day later it is", () => {
	// Seven days of delivery and seven between orders; two bars go each day.
	const usable = (expires: string) =>
		orderOf(planOfStore({ lots: [`S1 100 - - - ${expires}`] }), "usable")[0];
	expect([usable("2027-03-14"), usable("2027-03-15")]).toEqual([28, 100]);
});
