import { describe, expect, test } from "vitest";
import { cell, combined, order, two } from "./orderLines.ts";

describe("what stays apart, and what is said", () => {
	test("measures: litres and millilitres of one item are two rows", () => {
		const rows = two(
			{ item: "vinegar", measure: "L", target: 2, packSize: 1 },
			{ item: "vinegar", measure: "mL", target: 500, packSize: 1000 },
		);
		expect(rows.map((row) => [cell(row, "measure"), cell(row, "order_packs")])).toEqual([
			["L", 2],
			["mL", 1],
		]);
	});

	test("items keep the order in which they are first met", () => {
		const rows = combined(
			order("a.csv", [{ item: "soap" }, { item: "gauze" }]),
			order("b.csv", [{ item: "gloves" }, { item: "soap" }]),
		);
		expect(rows.map((row) => cell(row, "item"))).toEqual(["soap", "gauze", "gloves"]);
	});

	test("packs of different sizes: the largest is used, and it is said", () => {
		const [row] = two({ target: 30, packSize: 50 }, { target: 140, packSize: 100 });
		expect([cell(row, "order_packs"), cell(row, "order_quantity")]).toEqual([2, 200]);
		expect(cell(row, "remark")).toBe("The units name packs of 50, 100; the largest is used.");
	});

	test("the same size is not remarked on", () => {
		expect(cell(two({ packSize: 50 }, { packSize: 50 })[0], "remark")).toBe("");
	});

	test("a unit whose plan had no answer is named, and not taken as needing nothing", () => {
		const [row] = two({ target: "", usable: "", packSize: 50 }, { target: 80, packSize: 50 });
		expect([cell(row, "order_packs"), cell(row, "remark")]).toEqual([
			2,
			"No stock or target given, so not counted: A.",
		]);
	});

	// DEVELOPERS.md: never 0 for a hole.
	test("what no unit's plan has an answer for is blank, and what one has is added up", () => {
		const columns = ["usable", "target_stock", "need", "order_packs", "order_quantity", "cost"];
		const hole = { target: "", usable: "", packSize: 50, price: 2 } as const;
		const [none] = two(hole, hole);
		expect(columns.map((column) => cell(none, column))).toEqual(columns.map(() => null));
		expect([cell(none, "on_order"), cell(none, "units")]).toEqual([0, 2]);
		const [one] = two(hole, { target: 80, usable: 5, packSize: 50, price: 2 });
		expect(columns.map((column) => cell(one, column))).toEqual([5, 80, 75, 2, 100, 4]);
		const [enough] = two({ ...hole, target: 0, usable: 0 }, hole);
		expect(columns.map((column) => cell(enough, column))).toEqual([0, 0, 0, 0, 0, 0]);
	});

	test("everything there is to say stands in one remark", () => {
		const [row] = two(
			{ target: "", packSize: 50, emergency: "yes" },
			{ usable: "", packSize: 60, emergency: "yes" },
		);
		expect(cell(row, "remark")).toBe(
			"The units name packs of 50, 60; the largest is used. No stock or target given, so not counted: A, B. Runs out before an order can arrive: A, B.",
		);
	});

	test("a sum is asked of the lines it comes from, as their files have them", () => {
		const [row] = two({ usable: 5 }, { usable: 7 });
		const origin = row?.usable?.origin;
		const list = origin?.kind === "computed" ? Object.values(origin.inputs)[0]?.origin : undefined;
		const lines = list?.kind === "computed" ? list.inputs : {};
		expect(Object.entries(lines).map(([name, line]) => [name, line.outcome, line.origin])).toEqual([
			[
				"a.csv 2 (1)",
				{ ok: true, value: 5 },
				{ kind: "typed", place: { file: "a.csv", line: 2, column: "usable" } },
			],
			[
				"b.csv 2 (2)",
				{ ok: true, value: 7 },
				{ kind: "typed", place: { file: "b.csv", line: 2, column: "usable" } },
			],
		]);
		const values = { "b.csv 2 (2)": 7, "a.csv 2 (1)": 5 };
		expect(list?.kind === "computed" && list.calculation.compute(values)).toEqual([5, 7]);
	});

	test("units that run out before an order can arrive are named", () => {
		const [row] = two(
			{ target: 9, packSize: 5, emergency: "yes" },
			{ target: 9, packSize: 5, emergency: "no" },
		);
		expect(cell(row, "remark")).toBe("Runs out before an order can arrive: A.");
	});

	test("the earliest dates of the units; a blank is no date", () => {
		const [row] = two(
			{ runOut: "2027-04-02", orderBy: "" },
			{ runOut: "2027-03-30", orderBy: "2027-03-01" },
		);
		expect([cell(row, "run_out_on"), cell(row, "order_by")]).toEqual(["2027-03-30", "2027-03-01"]);
		expect(cell(two({}, {})[0], "run_out_on")).toBe("");
		const [later] = two({ runOut: "2027-03-30" }, { runOut: "2027-04-02" });
		expect(cell(later, "run_out_on")).toBe("2027-03-30");
	});

	test("a unit without a name goes by its file", () => {
		const [row] = combined(order("north.csv", [{ target: 5, packSize: 1 }]));
		expect(cell(row, "split")).toBe("north.csv: 5");
	});
});
