import { test } from "vitest";
import type { Calculation, Figure } from "../../src/core/calculation.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { monthTable } from "../../src/core/plan/record/monthTable.ts";
import { readTable } from "../../src/core/read/readTable.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { combineOrders } from "../../src/core/units/combineOrders.ts";
import { calculationWords } from "../golden/calculationWords.ts";
import { expectGolden } from "../golden/expectGolden.ts";
import { variants } from "../golden/variants.ts";
import { expectEachCalculation } from "./expectEachCalculation.ts";
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
const whys = new Set<string>();
for (const { rows } of tables)
	for (const row of rows) for (const cell of Object.values<Figure<unknown>>(row)) ask(cell);
const described = [...new Map([...used].map((c) => [`${c.key}: ${c.label}`, c])).entries()].filter(
	([, { key }]) => key !== "list",
);

expectEachCalculation(described, 130, "tests/golden/around-examples-inside.json");

/** Asks a figure "why?" until nothing is left to ask. Of a list, whose names are days or kinds, all that stands in it goes by one name. */
function ask(figure: Figure<unknown>): void {
	const { origin } = figure;
	if (origin.kind !== "computed" || seen.has(figure)) return;
	seen.add(figure);
	const { calculation, inputs } = origin;
	used.add(calculation);
	for (const [name, input] of Object.entries(inputs)) {
		whys.add(
			`${calculation.key}.${calculation.key === "list" ? "each" : name}: ${originOf(input)}`,
		);
		ask(input);
	}
}

/** Where a figure comes from and in what unit it is, without its value and its words. */
function originOf({ unit, origin }: Figure<unknown>): string {
	if (origin.kind === "computed") return `${origin.calculation.key} [${unit}]`;
	const place = "place" in origin ? `${origin.place.file} ${origin.place.column}` : "";
	return `${origin.kind} ${place} [${unit}]`;
}

test("whoever asks why comes to the same inputs, units and typed cells as ever", () => {
	const words = new Set([...used].map(calculationWords));
	expectGolden("tests/golden/whys.txt", `${[...whys, ...words].sort().join("\n")}\n`);
});
