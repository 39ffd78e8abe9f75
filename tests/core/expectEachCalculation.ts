import { describe, expect, test } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";
import { expectExample } from "./expectExample.ts";
import { expectPromise } from "./expectPromise.ts";
import { expectWords } from "./expectWords.ts";

type Described = readonly (readonly [name: string, calculation: Calculation])[];

/** Tests of each calculation by what it says of itself. @param atLeast so many of them are found */
export function expectEachCalculation(described: Described, atLeast: number): void {
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
}
