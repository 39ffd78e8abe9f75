import { describe, expect, test } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { expectWithin } from "../expectWithin.ts";
import { answerOf } from "./answerOf.ts";
import { calculationsBehind } from "./planCells.ts";
import { smallUnit, unitWith } from "./smallUnit.ts";

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
/** Those that a module keeps to itself show in what a plan's cells come from. */
const used = [smallUnit(), unitWith({ reprocessing: "after_each_use" })].flatMap((workbook) =>
	Object.values(plan(workbook).tables).flatMap((table) =>
		table.rows.flatMap((row) =>
			Object.values(row).flatMap((cell) => [...calculationsBehind(cell)]),
		),
	),
);
const described = [
	...new Map([...exported, ...used].map((c) => [`${c.key}: ${c.label}`, c])).entries(),
];
const withExample = described.filter(([, c]) => c.example);

/** Numbers within the example's own tolerance, everything else alike; a chance left out is 0. */
function expectLike(actual: unknown, expected: unknown, within: number, unit: string): void {
	if (typeof expected === "number") expectWithin(actual as number, expected, within, unit);
	else if (expected instanceof Float64Array) {
		const chances = actual as Float64Array;
		for (let i = 0; i < Math.max(chances.length, expected.length); i++)
			expectWithin(chances[i] ?? 0, expected[i] ?? 0, within, unit);
	} else if (typeof expected === "object" && expected !== null) {
		expect(Object.keys(actual as object).sort()).toEqual(Object.keys(expected).sort());
		for (const [key, part] of Object.entries(expected))
			expectLike((actual as Record<string, unknown>)[key], part, within, unit);
	} else expect(actual).toEqual(expected);
}

test("the calculations are found", () => {
	expect(exported.length).toBeGreaterThanOrEqual(25);
	expect(described.length).toBeGreaterThanOrEqual(55);
	expect(withExample.length).toBeGreaterThanOrEqual(13);
});

describe("every example gives what it says", () => {
	test.each(withExample)("%s", (_key, calculation) => {
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

	test.each(withExample)(
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
