import { expect } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";

/** A calculation says what it is: its name, formula and source, and the limits of what goes in. */
export function expectWords({ key, label, unit, formula, source, inputs }: Calculation): void {
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
}
