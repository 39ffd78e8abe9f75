import { describe, expect, test } from "vitest";
import type { AnyRow } from "../../../src/core/computedTable.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { orderSheet } from "../../../src/core/sheets/order.ts";
import { combineOrders, type UnitOrder } from "../../../src/core/units/combineOrders.ts";
import { codesOf, valueIn } from "../planCells.ts";

const contract =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,order_quantity,cost,run_out_on,order_by,months_of_stock,remark";
const added = ",emergency,pack_size,pack_price,unit_name";

/** One row of an order file, with what matters here given. */
interface Line {
	readonly item?: string;
	readonly measure?: string;
	readonly usable?: number | "";
	readonly onOrder?: number;
	readonly target?: number | "";
	readonly packs?: number | "";
	readonly quantity?: number | "";
	readonly cost?: number | "";
	readonly runOut?: string;
	readonly orderBy?: string;
	readonly emergency?: "yes" | "no";
	readonly packSize?: number | "";
	readonly price?: number | "";
	readonly unit?: string;
}

function cells(of: Line, isFull: boolean): string[] {
	const { item = "gauze", measure = "piece", usable = 0, onOrder = 0, target = 0 } = of;
	const { packs = "", quantity = "", cost = "", runOut = "", orderBy = "" } = of;
	const row = [item, measure, usable, onOrder, 10, target, packs, quantity, cost];
	const more = [of.emergency ?? "no", of.packSize ?? "", of.price ?? "", of.unit ?? ""];
	return [...row, runOut, orderBy, "", "", ...(isFull ? more : [])].map(String);
}

function order(file: string, lines: readonly Line[], isFull = true): UnitOrder {
	const header = (contract + (isFull ? added : "")).split(",");
	const rows = readTable(
		{ ...orderSheet, file },
		{ header, rows: lines.map((line) => cells(line, isFull)) },
	);
	return { file, rows };
}

const combined = (...orders: UnitOrder[]) => combineOrders(orders).rows;
const cell = (row: AnyRow | undefined, column: string) => valueIn(row?.[column]);
const two = (a: Line, b: Line) =>
	combined(order("a.csv", [{ unit: "A", ...a }]), order("b.csv", [{ unit: "B", ...b }]));

describe("packs of several units together", () => {
	test.each<[string, Line, Line, number, number, string]>([
		["one pack serves two halves", { target: 50 }, { target: 50 }, 100, 1, "A: 50; B: 50"],
		["and not a piece more", { target: 50 }, { target: 51 }, 101, 2, "A: 50; B: 51"],
		["surplus of a unit is not lent", { usable: 500 }, { target: 100 }, 100, 1, "B: 100"],
		[
			"what is on its way to one does not help the other",
			{ target: 30, onOrder: 90 },
			{ target: 130, usable: 20, onOrder: 5 },
			105,
			2,
			"B: 105",
		],
		["nobody short", { usable: 5, target: 5 }, { usable: 9, target: 5 }, 0, 0, ""],
		["halves of a piece", { target: 0.25 }, { target: 0.5 }, 0.75, 1, "A: 0.25; B: 0.5"],
	])("%s", (_what, a, b, need, packs, split) => {
		const rows = two({ packSize: 100, ...a }, { packSize: 100, ...b });
		expect(rows).toHaveLength(1);
		expect(
			["need", "order_packs", "order_quantity", "split"].map((key) => cell(rows[0], key)),
		).toEqual([need, packs, packs * 100, split]);
	});

	test("the columns are added up", () => {
		const [row] = two(
			{ usable: 5, onOrder: 7, target: 20, packSize: 10 },
			{ usable: 50, onOrder: 1, target: 30, packSize: 10 },
		);
		expect(
			["usable", "on_order", "use_expected", "target_stock", "units"].map((key) => cell(row, key)),
		).toEqual([55, 8, 20, 50, 2]);
	});

	test("one unit alone keeps its own packs", () => {
		const rows = combined(order("a.csv", [{ target: 130, usable: 20, packSize: 50, unit: "A" }]));
		expect([cell(rows[0], "order_packs"), cell(rows[0], "units")]).toEqual([3, 1]);
	});

	test("no orders make an empty list", () => {
		expect(combined()).toEqual([]);
	});

	test("two files of the same name are both counted", () => {
		const one = order("order.csv", [{ target: 30, packSize: 10, unit: "A" }]);
		const other = order("order.csv", [{ target: 40, packSize: 10, unit: "B" }]);
		const [row] = combined(one, other);
		expect([cell(row, "need"), cell(row, "order_packs")]).toEqual([70, 7]);
	});
});

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

describe("cost", () => {
	test.each<[string, Line, Line, unknown]>([
		["packs × price", { packSize: 50, price: 2 }, { packSize: 50, price: 2 }, 8],
		["the only price there is", { packSize: 50 }, { packSize: 50, price: 3 }, 12],
		["a free pack costs nothing", { packSize: 50, price: 0 }, { packSize: 50 }, 0],
		[
			"the price of the pack that is used",
			{ packSize: 50, price: 2 },
			{ packSize: 100, price: 3.5 },
			7,
		],
		[
			"a smaller pack's price is no price of the larger",
			{ packSize: 50, price: 2 },
			{ packSize: 100 },
			null,
		],
		["no price, no cost", { packSize: 50 }, { packSize: 50 }, null],
	])("%s", (_what, a, b, cost) => {
		expect(cell(two({ target: 80, ...a }, { target: 120, ...b })[0], "cost")).toBe(cost);
	});
});

describe("files without the added columns", () => {
	const old = (file: string, line: Line) => order(file, [line], false);

	test("pack size and price are what the packs ordered come to", () => {
		const [row] = combined(
			old("a.csv", { target: 30, packs: 1, quantity: 50, cost: 2 }),
			old("b.csv", { target: 120, packs: 3, quantity: 150, cost: 6 }),
		);
		expect(["need", "order_packs", "cost", "split", "remark"].map((key) => cell(row, key))).toEqual(
			[150, 3, 6, "a.csv: 30; b.csv: 120", ""],
		);
	});

	test("tenths that come out as tenths are one size", () => {
		const [row] = combined(
			old("a.csv", { target: 0.3, packs: 3, quantity: 0.3 }),
			old("b.csv", { target: 0.1, packs: 1, quantity: 0.1 }),
		);
		expect(["order_packs", "remark"].map((key) => cell(row, key))).toEqual([4, ""]);
	});

	test("beside a file that has them", () => {
		const [row] = combined(
			old("a.csv", { target: 30, packs: "", quantity: "" }),
			order("b.csv", [{ target: 30, packSize: 40, unit: "B" }]),
		);
		expect([cell(row, "order_packs"), cell(row, "split")]).toEqual([2, "a.csv: 30; B: 30"]);
	});

	test("a need without any pack size has no packs, and says why", () => {
		const [row] = combined(old("a.csv", { target: 30 }));
		expect(cell(row, "need")).toBe(30);
		for (const column of ["order_packs", "order_quantity"] as const)
			expect(codesOf(row?.[column])).toEqual(["no-pack-size"]);
		const problems = row?.order_packs.outcome.ok === false ? row.order_packs.outcome.problems : [];
		expect(problems).toMatchObject([{ file: "a.csv", line: 2, column: "pack_size", received: "" }]);
		const [other] = combined(old("a.csv", {}), old("b.csv", { target: 30 }));
		expect(codesOf(other?.order_packs)).toEqual(["no-pack-size"]);
	});

	test("without need the pack size does not matter", () => {
		const [row] = combined(old("a.csv", { target: 30, usable: 30, packs: 0, quantity: 0 }));
		expect(cell(row, "order_packs")).toBe(0);
	});
});
