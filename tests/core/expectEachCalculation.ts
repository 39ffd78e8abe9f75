import { describe, expect, test } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";
import { goldenAt } from "../golden/expectGolden.ts";
import { aroundExample, isTriedAround } from "./aroundExample.ts";
import { expectExample } from "./expectExample.ts";
import { expectPromise } from "./expectPromise.ts";
import { expectWords } from "./expectWords.ts";

type Described = readonly (readonly [name: string, calculation: Calculation])[];

/**
 * Tests of each calculation by what it says of itself.
 *
 * @param atLeast so many of them are found
 * @param golden what each gave around its example when that was last looked at
 */
export function expectEachCalculation(described: Described, atLeast: number, golden: string): void {
	test("the calculations are found, each with its example", () => {
		expect(described.length).toBeGreaterThanOrEqual(atLeast);
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

	describe("what it gives around its example is as it was", () => {
		const tried = described.filter(([, calculation]) => isTriedAround(calculation));
		const known = goldenAt(golden, () =>
			Object.fromEntries(tried.map(([name, one]) => [name, aroundExample(one)])),
		);

		test.each(tried)("%s", (name, calculation) => {
			expect(aroundExample(calculation)).toBe(known[name]);
		});

		test("nothing is left of a calculation that is gone", () => {
			expect(Object.keys(known).sort()).toEqual([...new Set(tried.map(([name]) => name))].sort());
		});
	});
}
