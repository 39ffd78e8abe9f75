import type { Calculation, Figure } from "../../src/core/calculation.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { monthTable } from "../../src/core/plan/record/monthTable.ts";
import { readTable } from "../../src/core/read/readTable.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { combineOrders } from "../../src/core/units/combineOrders.ts";
import { variants } from "../golden/variants.ts";
import { expectEachCalculation } from "./expectEachCalculation.ts";
import { calculationsBehind } from "./planCells.ts";
import { tableOf, unitWith } from "./smallUnit.ts";

/** Calculations that a module keeps to itself show in what cells come from; a list is none of them. */
const orders = tableOf(`item,measure,usable,on_order,use_expected,target_stock,order_packs,pack_size
	gauze,piece,0,0,90,100,1,100`);
const kept = `date,measure_of,expected,set_aside
	2027-03-01,kits_used,6,10
	2027-03-01,rounds,2,3`;
const births = "date,births,kits_used\n2027-03-01,5,4";
const tables = [
	...Object.values(variants).flatMap((workbook) => Object.values(plan(workbook).tables)),
	combineOrders([{ file: orderSheet.file, rows: readTable(orderSheet, orders) }]),
	monthTable(unitWith({}, { "past-plans.csv": kept, "records.csv": births }), "2027-03"),
];
const seen = new Set<Figure<unknown>>();
const used = new Set<Calculation>();
for (const { rows } of tables)
	for (const row of rows)
		for (const cell of Object.values<Figure<unknown>>(row)) calculationsBehind(cell, used, seen);
const described = [...new Map([...used].map((c) => [`${c.key}: ${c.label}`, c])).entries()].filter(
	([, { key }]) => key !== "list",
);

expectEachCalculation(described, 130);
