import { describe, expect, test } from "vitest";
import { expectExample } from "./expectExample.ts";
import { expectPromise } from "./expectPromise.ts";
import { expectWords } from "./expectWords.ts";
import { isCalculation } from "./isCalculation.ts";

const modules = import.meta.glob<Record<string, unknown>>("../../src/core/**/*.ts", {
	eager: true,
});
const exported = Object.values(modules).flatMap((module) =>
	Object.values(module).filter(isCalculation),
);
const described = exported.map((c) => [`${c.key}: ${c.label}`, c] as const);

test("the calculations are found, each with its example", () => {
	expect(exported.length).toBeGreaterThanOrEqual(90);
	expect(described.flatMap(([name, { example }]) => (example ? [] : [name]))).toEqual([]);
});

describe("every example gives what it says", () => {
	test.each(described)("%s", (_name, calculation) => expectExample(calculation));
});

describe("what may come is what is set aside for", () => {
	const promising = described.filter(([, { mayCome, follows }]) => mayCome || follows);

	test.each(promising)("%s", (_name, calculation) => expectPromise(calculation));
});

describe("every calculation says what it is", () => {
	test.each(described)("%s", (_name, calculation) => expectWords(calculation));
});

test("what can hurt someone is said with the number", () => {
	const cautionOf = (key: string) => exported.find((c) => c.key === key)?.caution ?? "";
	expect(cautionOf("measure_out")).toMatch(/water first.*Never with vinegar/);
	for (const key of ["vinegar_per_descale", "vinegar_litres_expected", "vinegar_litres_set_aside"])
		expect(cautionOf(key)).toMatch(/poisonous gas/);
	expect(cautionOf("kits_needed")).toMatch(/baby cannot wait/);
});
