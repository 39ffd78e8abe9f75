import { test } from "vitest";
import { mean } from "../../../src/core/counts/counts.ts";
import { delaporte } from "../../../src/core/counts/delaporte.ts";
import { negativeBinomial } from "../../../src/core/counts/negativeBinomial.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { plus } from "../../../src/core/counts/sumOf.ts";
import { expectWithin } from "../../expectWithin.ts";

test.each([
	["short lists", 0.1, 1, 0.1],
	["a level wide beside few of their own", 6, 0.3, 500],
	["its likeliest not 0", 6, 12, 5000],
	["many of their own", 300, 0.8, 4000],
	["more of their own than at the level", 3000, 0.8, 400],
])("both parts multiplied out, amount by amount: %s", (_what, sure, size, mixed) => {
	const found = delaporte(sure, size, mixed);
	const added = plus(poisson(sure), negativeBinomial(size, mixed));
	// One answer for all amounts: there are hundreds of thousands.
	let [worst, at] = [0, 0];
	for (let n = 0; n < added.first + added.chance.length; n++) {
		const chance = added.chance[n - added.first] ?? 0;
		const off = Math.abs((found.chance[n - found.first] ?? 0) - chance) / (1e-9 * chance + 2e-16);
		if (off > worst || Number.isNaN(off)) [worst, at] = [off, n];
	}
	expectWithin(worst, 0, 1, `times what is allowed, at ${at}`);
	expectWithin(mean(found), sure + mixed, 1e-9 * (sure + mixed), "births");
});

test("a level so wide that millions are possible has the mean and variance of its parts", () => {
	const [sure, size, mixed] = [9, 0.2, 5000];
	const { first, chance } = delaporte(sure, size, mixed);
	let [all, variance] = [0, 0];
	for (let i = 0; i < chance.length; i++) {
		all += chance[i] as number;
		variance += (chance[i] as number) * (first + i - sure - mixed) ** 2;
	}
	expectWithin(all, 1, 1e-11, "chance");
	// What is cut off is far above the mean, and seen in the variance first.
	expectWithin(variance / (sure + mixed + mixed ** 2 / size), 1, 2e-9, "times");
});

test.each([
	["none that are Poisson", delaporte(0, 3, 7), negativeBinomial(3, 7)],
	["none at the level", delaporte(7, Number.POSITIVE_INFINITY, 0), poisson(7)],
])("%s", (_what, found, other) => {
	other.chance.forEach((chance, i) => {
		const n = other.first + i;
		expectWithin(found.chance[n - found.first] ?? 0, chance, 2e-16, "chance");
	});
});
