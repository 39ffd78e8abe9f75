import { describe, expect, test } from "vitest";
import { valueIn } from "../../../src/core/outcome.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { districtStockSheet } from "../../../src/core/sheets/districtStock.ts";
import { orderSheet } from "../../../src/core/sheets/order.ts";
import { unitsOrderSheet } from "../../../src/core/sheets/unitsOrder.ts";
import { combineOrders } from "../../../src/core/units/combineOrders.ts";
import { DistrictOrder } from "../../../src/core/units/districtOrder.ts";
import { itemNames } from "../../../src/core/units/itemNames.ts";
import { storeStock } from "../../../src/core/units/storeStock.ts";
import { valuesOf } from "../../../src/core/valuesOf.ts";
import { tableOf } from "../smallUnit.ts";

const HEADER =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,pack_size,pack_price,run_out_on,order_by,emergency";
const order = (...lines: string[]) =>
	readTable(orderSheet, tableOf([HEADER, ...lines].join("\n"))).rows.map(({ value }) => value);
const store = (...lines: string[]) =>
	readTable(districtStockSheet, tableOf(["item,quantity,measure", ...lines].join("\n")));

/** The order of the units given, row by row by column. */
function ordered(
	units: ReturnType<typeof order>[],
	{ names = {}, stock = [] }: { names?: Record<string, string>; stock?: string[] } = {},
) {
	const nameOf = itemNames(Object.entries(names).map(([item, name]) => ({ item, name })));
	const sums = new DistrictOrder(nameOf);
	for (const unit of units) sums.add(unit);
	const { table, problems } = sums.table(storeStock(store(...stock), nameOf));
	return { rows: table.rows.map((row) => valuesOf(unitsOrderSheet, row)), problems };
}

const north = order(
	"gauze,piece,10,20,50,100,1,100,2.5,2027-03-09,2027-03-02,no",
	"gloves,pair,40,0,20,30,0,50,6,,,no",
);
const south = order(
	"gauze,piece,0,0,50,60.5,1,100,2.5,2027-03-05,2027-02-26,yes",
	"Gauze 10 × 10,piece,5,0,5,10,1,25,1,,,no",
	"bleach,L,,,3,9,,5,3,,,",
);

test("what the district has is taken off the item that it has, and off no other in its measure", () => {
	const { rows, problems } = ordered([south], { stock: ["Gauze 10 × 10,2,piece"] });
	expect(problems).toEqual([]);
	expect(rows.map(({ item, in_store }) => [item, in_store])).toEqual([
		["gauze", null],
		["Gauze 10 × 10", 2],
		["bleach", null],
	]);
});

describe("units added up", () => {
	test("a unit that has two names for an item is one unit: that is short, and that runs out first", () => {
		const east = order(
			"bleach,L,1,0,3,9,8,1,3,2027-03-02,2027-02-20,yes",
			"bleach 3.5 %,L,2,0,3,9,7,1,3,2027-03-03,2027-02-21,yes",
			"gauze,piece,,,,,,,,,,",
			"swabs,piece,,,,,,,,,,",
		);
		const names = { "bleach 3.5 %": "bleach", swabs: "gauze" };
		const [bleach, gauze] = ordered([east], { names }).rows;
		expect(bleach).toMatchObject({
			...{ units: 1, units_short: 1, units_run_out_first: 1, units_unknown: 0 },
			...{ usable: 3, target_stock: 18, need: 8 + 7, unit_packs: 15, run_out_on: "2027-03-02" },
		});
		expect(gauze).toMatchObject({ units: 1, units_short: 0, units_unknown: 1 });
	});

	test("needs, not stocks: a unit with more than enough lends nothing", () => {
		const [gauze, gloves] = ordered([north, south]).rows;
		expect(gauze).toMatchObject({
			item: "gauze",
			units: 2,
			units_short: 2,
			units_unknown: 0,
			units_run_out_first: 1,
			usable: 10,
			on_order: 20,
			use_expected: 100,
			target_stock: 160.5,
			need: 70 + 60.5,
			in_store: null,
			to_order: 130.5,
			order_packs: 2,
			order_quantity: 200,
			cost: 5,
			unit_packs: 2,
			run_out_on: "2027-03-05",
			order_by: "2027-02-26",
			remark: "",
		});
		expect(gloves).toMatchObject({ units: 1, units_short: 0, need: 0, order_packs: 0, cost: 0 });
		expect(gloves).toMatchObject({ units_run_out_first: 0 });
	});

	test("what a unit does not know is no 0, and is said", () => {
		expect(ordered([south]).rows[2]).toMatchObject({ item: "bleach", units: 1, units_unknown: 1 });
	});

	test("as the list of several units' orders has it", () => {
		const orders = [north, south].map((rows, at) => ({
			file: `${at}`,
			rows: {
				file: "",
				rows: rows.map((value, line) => ({ line, value })),
				badRows: [],
				problems: [],
				absent: false,
			},
		}));
		const listed = combineOrders(orders).rows.map((row) => [
			valueIn(row.item),
			valueIn(row.need),
			valueIn(row.order_packs),
			valueIn(row.cost),
			valueIn(row.run_out_on),
		]);
		const { rows } = ordered([north, south]);
		expect(
			rows.map((row) => [row.item, row.need, row.order_packs, row.cost, row.run_out_on]),
		).toEqual(listed);
	});
});

describe("names of the district", () => {
	const names = { "Gauze 10 × 10": "gauze" };

	test("only what the table names is one item; the largest pack is used, and said", () => {
		expect(ordered([south]).rows.map(({ item }) => item)).toEqual([
			"gauze",
			"Gauze 10 × 10",
			"bleach",
		]);
		const { rows } = ordered([north, south], { names });
		expect(rows.map(({ item }) => item)).toEqual(["gauze", "gloves", "bleach"]);
		expect(rows[0]).toMatchObject({ units: 2, need: 135.5, pack_size: 100, order_packs: 2 });
		expect(rows[0]?.remark).toBe("The units name packs of 25, 100; the largest is used.");
	});

	test("a name is looked up once, as it is written", () => {
		const nameOf = itemNames([
			{ item: "a", name: "b" },
			{ item: "b", name: "c" },
		]);
		expect(["a", " b ", "A", " d "].map(nameOf)).toEqual(["b", "c", "A", "d"]);
	});
});

describe("the district's own store", () => {
	test.each([
		[["gauze,100,"], { in_store: 100, to_order: 30.5, order_packs: 1 }],
		[["gauze,100,piece", "gauze,20.5, piece "], { in_store: 120.5, to_order: 10, order_packs: 1 }],
		[["gauze,500,"], { in_store: 500, to_order: 0, order_packs: 0, cost: 0 }],
		[["gauze,0,"], { in_store: 0, to_order: 130.5, order_packs: 2 }],
	])("%j is taken off", (stock, row) => {
		const { rows, problems } = ordered([north, south], { stock });
		expect(rows[0]).toMatchObject(row);
		expect(problems).toEqual([]);
	});

	test("by the district's name of the item", () => {
		const names = { "Gauze 10 × 10": "gauze" };
		const { rows } = ordered([north, south], { names, stock: ["Gauze 10 × 10,100,"] });
		expect(rows[0]).toMatchObject({ need: 135.5, in_store: 100, to_order: 35.5 });
	});

	test("what no unit lists, or counts otherwise, is taken off nothing, and named", () => {
		const { rows, problems } = ordered([north, south], { stock: ["gauze,3,box", "soap,2,"] });
		expect(rows.map(({ in_store }) => in_store)).toEqual([null, null, null, null]);
		expect(problems).toMatchObject([
			{
				...{ code: "store-not-taken-off", file: "district-stock.csv", line: 2, column: "measure" },
				...{ received: "box", allowed: "piece" },
				message: expect.stringMatching(/^The units count gauze in piece; .* says box,/),
			},
			{
				...{ code: "store-not-taken-off", line: 3, column: "item" },
				...{ received: "soap", allowed: "an item that some unit lists" },
				message: expect.stringMatching(/^No unit lists soap,/),
			},
		]);
	});

	test("an item in two measures is two rows that name each other", () => {
		const boxes = order("gauze,box,0,0,1,3,3,1,9,,,no");
		const { rows, problems } = ordered([north, boxes], { stock: ["gauze,1,", "gauze,2,box"] });
		expect(rows.map(({ item, measure }) => `${item} ${measure}`)).toEqual([
			"gauze piece",
			"gloves pair",
			"gauze box",
		]);
		expect(rows.map(({ remark }) => remark)).toEqual([
			"Other units count it in box: that is a row of its own.",
			"",
			"Other units count it in piece: that is a row of its own.",
		]);
		expect(rows.map(({ in_store }) => in_store)).toEqual([null, null, 2]);
		const small = order("gauze,piece,0,0,1,3,1,25,1,,,no");
		expect(ordered([north, boxes, small]).rows[0]?.remark).toBe(
			"The units name packs of 25, 100; the largest is used. Other units count it in box: that is a row of its own.",
		);
		expect(problems.map(({ allowed, message }) => [allowed, message.includes(" says –,")])).toEqual(
			[["piece, box", true]],
		);
	});
});

test.each([
	["are not counted", 3, null, null],
	["are none where nothing is needed", 0, 0, 0],
])("packs of a size that nobody says %s", (_what, target, order_packs, cost) => {
	const unit = order(`soap,bar,0,0,1,${target},,,2,,,no`);
	expect(ordered([unit]).rows[0]).toMatchObject({
		need: target,
		pack_size: null,
		order_packs,
		cost,
	});
});

test("a need without any pack size says so of the district's own list", () => {
	const sums = new DistrictOrder();
	sums.add(order("soap,bar,0,0,1,3,,,2,,,no"));
	const outcome = sums.table().table.rows[0]?.order_packs.outcome;
	expect(outcome?.ok === false && outcome.problems).toMatchObject([
		{ code: "no-pack-size", file: "units-order.csv", line: null, column: "" },
	]);
});

// DEVELOPERS.md: never 0 for a hole.
test("what no unit's plan has an answer for is blank, whatever the store has", () => {
	const hole = order("gauze,piece,,,,,,100,2,,,no");
	const blank = { usable: null, on_order: null, use_expected: null, target_stock: null };
	const nothing = {
		need: null,
		to_order: null,
		order_packs: null,
		order_quantity: null,
		cost: null,
	};
	for (const stock of [[], ["gauze,40,"]])
		expect(ordered([hole, hole], { stock }).rows[0]).toMatchObject({
			...blank,
			...nothing,
			units: 2,
			units_unknown: 2,
			unit_packs: null,
		});
	const known = order("gauze,piece,5,0,1,80,1,100,2,,,no");
	expect(ordered([hole, known]).rows[0]).toMatchObject({
		...{ usable: 5, on_order: 0, use_expected: 1, target_stock: 80, need: 75, to_order: 75 },
		...{ order_packs: 1, unit_packs: 1, units_unknown: 1 },
	});
});

test.each([
	["the first of its size", ["100,2.5", "100,3", "25,1"], 2.5],
	["the first that is given", ["100,", "100,3"], 3],
	["that of packs of a size nobody says", [",7", ",8", "100,"], 7],
	["a smaller pack's says nothing", ["25,1", "100,"], null],
])("the price of a pack: %s", (_what, packs, cost) => {
	const units = packs.map((pack) => order(`gauze,piece,0,0,1,10,,${pack},,,no`));
	expect(ordered(units).rows[0]).toMatchObject({ pack_size: 100, order_packs: 1, cost });
});

test("orders of no store, by the units' own names", () => {
	const sums = new DistrictOrder();
	sums.add(north);
	const { table, problems } = sums.table();
	expect(table.rows.map(({ item, in_store }) => [valueIn(item), valueIn(in_store)])).toEqual([
		["gauze", null],
		["gloves", null],
	]);
	expect(problems).toEqual([]);
});

/** Two units of one order each, of which one or the other knows a day. */
test.each([
	["2027-03-09", ""],
	["", "2027-03-09"],
	["2027-03-09", "2027-03-10"],
])("the first day of %j and %j", (one, other) => {
	const units = [one, other].map((day) => order(`gauze,piece,0,0,1,10,,100,,${day},,no`));
	expect(ordered(units).rows[0]).toMatchObject({ run_out_on: "2027-03-09", order_by: "" });
});
