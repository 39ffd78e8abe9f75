import { expect } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";
import { expectWithin } from "../expectWithin.ts";
import { answerOf } from "./answerOf.ts";

/** The example of a calculation gives every input, inside its limits, and the result it says. */
export function expectExample(calculation: Calculation): void {
	const { inputs, result, within } = calculation.example as NonNullable<Calculation["example"]>;
	expect(Object.keys(inputs).sort()).toEqual(Object.keys(calculation.inputs).sort());
	expectLike(answerOf(calculation, inputs), result, within, calculation.unit);
}

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
