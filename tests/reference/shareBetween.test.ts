import { qbeta } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import { shareBetween } from "../../src/core/counts/shareBetween.ts";
import { expectWithin } from "../expectWithin.ts";

/** Times, of, sureness, low, high, half a unit of the last printed digit, where from. */
const printed = [
	[
		4,
		20,
		0.95,
		0.057334,
		0.436614,
		5.1e-7,
		"example printed with the R function exactci, r = 4, n = 20; seen",
	],
	[
		81,
		263,
		0.95,
		0.2527,
		0.3676,
		5.1e-5,
		"Newcombe, Statistics in Medicine 17:857, 1998, table I; from memory",
	],
	[15, 148, 0.95, 0.0578, 0.1617, 5.1e-5, "Newcombe 1998, table I; from memory"],
	[0, 20, 0.95, 0, 0.1684, 5.1e-5, "Newcombe 1998, table I; from memory"],
	[1, 29, 0.95, 0.0009, 0.1776, 5.1e-5, "Newcombe 1998, table I; from memory"],
] as const;

describe("the exact interval of a share, against printed values", () => {
	test.each(printed)("%d of %d at %d", (times, of, sureness, low, high, tolerance) => {
		const found = shareBetween(times, of, sureness);
		expectWithin(found.low, low, tolerance, "share");
		expectWithin(found.high, high, tolerance, "share");
	});
});

/** The ends are quantiles of beta distributions (Johnson, Kotz, Kemp; from memory). */
test("agrees with the beta quantiles of a general library", () => {
	for (const of of [1, 7, 31, 365, 2_000])
		for (const share of [0.02, 0.3, 0.5, 0.9, 0.99])
			for (const sureness of [0.9, 0.95, 0.999]) {
				const times = Math.round(share * of);
				const tail = (1 - sureness) / 2;
				const { low, high } = shareBetween(times, of, sureness);
				const asBeta = {
					low: times === 0 ? 0 : qbeta(tail, times, of - times + 1),
					high: times === of ? 1 : qbeta(1 - tail, times + 1, of - times),
				};
				// The library searches to about nine digits.
				expectWithin(low, asBeta.low, 1e-8, "share");
				expectWithin(high, asBeta.high, 1e-8, "share");
			}
});

test("the closed forms at the ends", () => {
	expectWithin(shareBetween(0, 10, 0.95).high, 1 - 0.025 ** 0.1, 1e-12, "share");
	expectWithin(shareBetween(10, 10, 0.95).low, 0.025 ** 0.1, 1e-12, "share");
	expect(shareBetween(10, 10, 0.95).high).toBe(1);
});
