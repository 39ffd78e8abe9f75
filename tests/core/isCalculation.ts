import type { Calculation } from "../../src/core/calculation.ts";

export function isCalculation(value: unknown): value is Calculation {
	return (
		typeof value === "object" &&
		value !== null &&
		"compute" in value &&
		"formula" in value &&
		"inputs" in value
	);
}
