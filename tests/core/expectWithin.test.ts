import { describe, expect, test } from "vitest";
import { expectWithin } from "../expectWithin.ts";

describe("expectWithin", () => {
	test.each([
		[6, 6, 0],
		[6.05, 6, 0.1],
		[-6.05, -6, 0.1],
	])("%d is within %d ± %d", (actual, expected, tolerance) => {
		expectWithin(actual, expected, tolerance, "parts");
	});

	test.each([
		[6.2, 6, 0.1],
		[undefined, 6, 0.1],
		[Number.NaN, 6, 0.1],
		[Number.NaN, Number.NaN, 1],
		[Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 1],
		[6 + 1e-9, 6, 0],
	])("%s is not within %d ± %d", (actual, expected, tolerance) => {
		expect(() => expectWithin(actual, expected, tolerance, "parts")).toThrow(/should be within/);
	});
});
