import { expect } from "vitest";

/**
 * Fails unless `actual` is a number no further than `tolerance` from `expected`.
 *
 * A missing value, NaN or infinity is never within anything. Tolerance 0 means exactly equal.
 *
 * @example expectWithin(6.0000001, 6, 1e-6, "parts")
 */
export function expectWithin(
	actual: number | undefined,
	expected: number,
	tolerance: number,
	unit: string,
): void {
	const within = typeof actual === "number" && Math.abs(actual - expected) <= tolerance;
	// Asked millions of times: nothing is told while nothing is wrong.
	if (within) return;
	expect(within, `${actual} ${unit} should be within ${tolerance} of ${expected} ${unit}`).toBe(
		true,
	);
}
