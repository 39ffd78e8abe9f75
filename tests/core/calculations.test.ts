import { describe, expect, test } from "vitest";
import type { Calculation, Figure } from "../../src/core/calculation.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { readTable } from "../../src/core/read/readTable.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { combineOrders } from "../../src/core/units/combineOrders.ts";
import { expectWithin } from "../expectWithin.ts";
import { variants } from "../golden/variants.ts";
import { answerOf } from "./answerOf.ts";
import { calculationsBehind } from "./planCells.ts";
import { tableOf } from "./smallUnit.ts";

const modules = import.meta.glob<Record<string, unknown>>("../../src/core/**/*.ts", {
	eager: true,
});

function isCalculation(value: unknown): value is Calculation {
	return (
		typeof value === "object" &&
		value !== null &&
		"compute" in value &&
		"formula" in value &&
		"inputs" in value
	);
}

const exported = Object.values(modules).flatMap((module) =>
	Object.values(module).filter(isCalculation),
);
const orders = tableOf(`item,measure,usable,on_order,use_expected,target_stock,order_packs,pack_size
	gauze,piece,0,0,90,100,1,100`);
/** Those that a module keeps to itself show in what cells come from; a list is none of them. */
const tables = [
	...Object.values(variants).flatMap((workbook) => Object.values(plan(workbook).tables)),
	combineOrders([{ file: orderSheet.file, rows: readTable(orderSheet, orders) }]),
];
const seen = new Set<Figure<unknown>>();
const used = new Set<Calculation>();
for (const { rows } of tables)
	for (const row of rows)
		for (const cell of Object.values<Figure<unknown>>(row)) calculationsBehind(cell, used, seen);
const described = [
	...new Map([...exported, ...used].map((c) => [`${c.key}: ${c.label}`, c])).entries(),
].filter(([, { key }]) => key !== "list");

type OfDay = (day: number) => unknown;

/** Numbers within the example's own tolerance, everything else alike; a chance left out is 0, a function of days is tried on two. */
function expectLike(actual: unknown, expected: unknown, within: number, unit: string): void {
	if (typeof expected === "number") expectWithin(actual as number, expected, within, unit);
	else if (expected instanceof Float64Array) {
		const chances = actual as Float64Array;
		for (let i = 0; i < Math.max(chances.length, expected.length); i++)
			expectWithin(chances[i] ?? 0, expected[i] ?? 0, within, unit);
	} else if (typeof expected === "function")
		for (const day of [0, 30]) expectLike((actual as OfDay)(day), expected(day), within, unit);
	else if (typeof expected === "object" && expected !== null) {
		expect(Object.keys(actual as object).sort()).toEqual(Object.keys(expected).sort());
		for (const [key, part] of Object.entries(expected))
			expectLike((actual as Record<string, unknown>)[key], part, within, unit);
	} else expect(actual).toEqual(expected);
}

test("the calculations are found, each with its example", () => {
	expect(exported.length).toBeGreaterThanOrEqual(25);
	expect(described.length).toBeGreaterThanOrEqual(130);
	expect(described.flatMap(([name, { example }]) => (example ? [] : [name]))).toEqual([]);
});

describe("every example gives what it says", () => {
	test.each(described)("%s", (_key, calculation) => {
		const { inputs, result, within } = calculation.example as NonNullable<Calculation["example"]>;
		expectLike(answerOf(calculation, inputs), result, within, calculation.unit);
	});
});

describe("every calculation says what it is", () => {
	test.each(described)("%s", (_name, calculation) => {
		const { key, label, unit, formula, source, inputs } = calculation;
		expect(key).toMatch(/^[a-z][A-Za-z0-9_]*$/);
		expect(label.trim()).not.toBe("");
		expect(typeof unit).toBe("string");
		expect(formula.trim()).toMatch(/[.!]$/);
		expect(source.title.trim()).not.toBe("");
		expect(source.mark.trim()).not.toBe("");
		for (const input of Object.values(inputs)) {
			expect(input.label.trim()).not.toBe("");
			expect(typeof input.unit).toBe("string");
			if (input.min !== undefined && input.max !== undefined)
				expect(input.min).toBeLessThan(input.max);
		}
	});

	test.each(described)(
		"the example of %s gives every input, inside its limits",
		(_key, calculation) => {
			const { inputs } = calculation.example as NonNullable<Calculation["example"]>;
			expect(Object.keys(inputs).sort()).toEqual(Object.keys(calculation.inputs).sort());
		},
	);

	test("what can hurt someone is said with the number", () => {
		const cautionOf = (key: string) => exported.find((c) => c.key === key)?.caution ?? "";
		expect(cautionOf("measure_out")).toMatch(/water first.*Never with vinegar/);
		for (const key of [
			"vinegar_per_descale",
			"vinegar_litres_expected",
			"vinegar_litres_set_aside",
		])
			expect(cautionOf(key)).toMatch(/poisonous gas/);
		expect(cautionOf("kits_needed")).toMatch(/baby cannot wait/);
	});
});
