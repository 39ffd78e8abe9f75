import cdf from "@stdlib/stats-base-dists-poisson-cdf";
import quantile from "@stdlib/stats-base-dists-poisson-quantile";
import { ppois, qpois } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import { chanceAtMost, setAside } from "../../src/core/counts/counts.ts";
import { poisson } from "../../src/core/counts/poisson.ts";
import { expectWithin } from "../expectWithin.ts";

const means = [
	0.01, 0.04, 0.1, 0.28, 0.3, 0.44, 0.5, 0.6, 0.9, 1, 1.5, 2, 2.74, 3, 4.2, 5, 6.5, 8, 10, 12.5, 20,
	30, 42, 50, 75, 100, 150, 200, 366, 500, 700, 745, 750, 1000,
];
const levels = [
	0.5, 0.51, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.925, 0.95, 0.975, 0.98, 0.99, 0.995, 0.999, 0.9995,
	0.9999,
];

/** Both give −0 for 0; adding 0 makes it 0. */
describe("set aside agrees with two independent libraries", () => {
	test.each(means)("mean %d at every level", (mean) => {
		const ours = levels.map((level) => setAside(poisson(mean), level));
		expect(ours).toEqual(levels.map((level) => qpois(level, mean) + 0));
		expect(ours).toEqual(levels.map((level) => quantile(level, mean) + 0));
	});

	// One of the libraries is known to be wrong here; the port of R is right.
	test.each([1001, 1005, 1006.35, 2500, 5000, 12_345.6, 50_000])(
		"mean %d, above 1,000, at every level",
		(mean) => {
			expect(levels.map((level) => setAside(poisson(mean), level))).toEqual(
				levels.map((level) => qpois(level, mean) + 0),
			);
		},
	);
});

describe("cumulative chances agree with two independent libraries", () => {
	const spread = (mean: number) =>
		[-3, -2, -1, 0, 1, 2, 3, 4]
			.map((sd) => Math.floor(mean + sd * Math.sqrt(mean)))
			.filter((k) => k >= 0);

	test.each(means)("mean %d", (mean) => {
		for (const k of spread(mean)) {
			expectWithin(chanceAtMost(poisson(mean), k), ppois(k, mean), 1e-12, "chance");
			expectWithin(chanceAtMost(poisson(mean), k), cdf(k, mean), 1e-12, "chance");
		}
	});

	test.each([1005, 5000, 50_000])("mean %d, above 1,000", (mean) => {
		for (const k of spread(mean))
			expectWithin(chanceAtMost(poisson(mean), k), ppois(k, mean), 1e-10, "chance");
	});
});
