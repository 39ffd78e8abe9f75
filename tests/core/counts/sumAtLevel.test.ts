import { test } from "vitest";
import { type Counts, setAside } from "../../../src/core/counts/counts.ts";
import { delaporte } from "../../../src/core/counts/delaporte.ts";
import { negativeBinomial } from "../../../src/core/counts/negativeBinomial.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { sumAtLevel } from "../../../src/core/counts/sumAtLevel.ts";
import { sumOf } from "../../../src/core/counts/sumOf.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Births of a forecast day, Poisson at each level. */
function birthsOf(mean: number, levelShape: number) {
	const level = { mean, levelShape, daySpread: 0 };
	const at = (factor: number) => poisson(mean * factor);
	return { given: { level, mean, alike: String(mean), at } };
}

function expectSame(found: Counts, wanted: Counts, each = 1): void {
	wanted.chance.forEach((chance, i) => {
		const amount = each * (wanted.first + i);
		expectWithin(found.chance[amount - found.first] ?? 0, chance, 1e-12, `chance of ${amount}`);
	});
}

test("a day whose births all take the same is its count, stretched", () => {
	const { given } = birthsOf(5, 3);
	const day = { ...delaporte(0.5, 3, 5), given: { ...given, sure: 0.5 } };
	expectSame(sumAtLevel([day], [2]), day, 2);
});

test.each([
	["a day, at a level far wider than its own chance", 1, 120],
	["more than a month, at a level as wide", 40, 3],
])("%s: within 1 in 100 of a negative binomial count", (_what, days, mean) => {
	const found = sumAtLevel(Array.from({ length: days }, () => birthsOf(mean, 3)));
	const exact = negativeBinomial(3, days * mean);
	for (const level of [0.5, 0.8, 0.95, 0.99]) {
		const wanted = setAside(exact, level);
		expectWithin(setAside(found, level), wanted, Math.max(1, 0.01 * wanted), `at ${level}`);
	}
});

test("at a level that is known well, days of any number are added up exactly", () => {
	const days = Array.from({ length: 40 }, () => birthsOf(0.2, 1e9));
	expectSame(sumAtLevel(days), poisson(8));
});

test("days that are known are each their own among those at a level", () => {
	const known = [poisson(2), { first: 1, chance: Float64Array.of(0.25, 0, 0.75) }];
	const [alone, both] = [birthsOf(4, 20), [birthsOf(4, 20), ...known]];
	expectSame(sumAtLevel(both), sumOf([sumAtLevel([alone]), ...known]));
});
