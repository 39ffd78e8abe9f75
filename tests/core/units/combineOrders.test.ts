import { describe, expect, test } from "vitest";
import { codesOf } from "../planCells.ts";
import { cell, combined, type Line, order, two } from "./orderLines.ts";

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

describe("cost", () => {
	test.each<[string, Line, Line, unknown]>([
		["packs × price", { packSize: 50, price: 2 }, { packSize: 50, price: 2 }, 8],
		["the only price there is", { packSize: 50 }, { packSize: 50, price: 3 }, 12],
		["a price for packs of a size that nobody says", { price: 3 }, { packSize: 50 }, 12],
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
