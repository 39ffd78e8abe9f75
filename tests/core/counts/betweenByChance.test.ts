import { expect, test } from "vitest";
import { betweenByChance } from "../../../src/core/counts/betweenByChance.ts";

test.each([
	// Tables of the Poisson distribution: of a mean of 20, at most 12 come with 0.039, at most 28 with 0.966.
	[20, 0.9, 13, 28],
	[20, 0.95, 12, 29],
	[0.5, 0.9, 0, 2],
	[0, 0.9, 0, 0],
])(
	"with %d expected, of %d of all cases between %d and %d come",
	(expected, sureness, low, high) => {
		expect(betweenByChance(expected, sureness)).toEqual({ low, high });
	},
);
