import { test } from "vitest";
import { mean, setAside } from "../../../src/core/counts/counts.ts";
import { longTotal } from "../../../src/core/counts/longTotal.ts";
import { negativeBinomial } from "../../../src/core/counts/negativeBinomial.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Births of so many on average, each of which takes so much: Poisson at a level. */
const atLevel = (births: number, each: number) => (factor: number) => ({
	mean: births * factor * each,
	variance: births * factor * each ** 2,
	third: births * factor * each ** 3,
	most: 100 * births * each,
});

// At a Gamma level Poisson counts are negative binomial.
test.each([
	["one by one", 3, 100, 1, 0.01],
	["of a level that is even enough for the whole", 40, 500, 1, 0.001],
	["some hundreds for each", 3, 50, 300, 0.01],
	["some hundreds for each, of an even level", 400, 2000, 300, 0.002],
])("a long total, %s: near as many times the births", (_what, shape, births, each, within) => {
	const found = longTotal(shape, atLevel(births, each), Number.POSITIVE_INFINITY);
	const exact = negativeBinomial(shape, births);
	expectWithin(mean(found), births * each, 1e-3 * births * each, "");
	for (const level of [0.5, 0.8, 0.95, 0.99]) {
		const wanted = each * setAside(exact, level);
		expectWithin(setAside(found, level), wanted, within * wanted + each - 1, `at ${level}`);
	}
});
