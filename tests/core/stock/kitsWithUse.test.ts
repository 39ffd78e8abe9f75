import { expect, test } from "vitest";
import { type Counts, mean } from "../../../src/core/counts/counts.ts";
import { kitsWithUse } from "../../../src/core/stock/kitsWithUse.ts";
import { expectWithin } from "../../expectWithin.ts";

const chanceOf = ({ first, chance }: Counts, use: number) => chance[use - first] ?? 0;
/** Chance of exactly n, of a Poisson count. */
function poissonOf(n: number, of: number): number {
	let chance = Math.exp(-of);
	for (let k = 1; k <= n; k++) chance *= of / k;
	return chance;
}
const nothing = () => 0;
/** A hundred kits of two kinds: so many that none at all does not come. */
const many = [60, 40];

test.each([
	[0, 1],
	[1, 0.5],
	[2, 0.5 ** 2 / 2 + 0.25],
	[3, 0.5 ** 3 / 6 + 0.5 * 0.25],
])("two kinds, which take 1 and 2: %d in all", (use, part) => {
	const used = kitsWithUse([0.5, 0.25], [1, 2], nothing, 1000);
	expectWithin(chanceOf(used, use), part * Math.exp(-0.75), 1e-12, "");
});

test("of many kits, each kind's own use and what goes by their number", () => {
	const tens = (kits: number) => Math.ceil(kits / 10);
	let expected = 60 * 1 + 40 * 3;
	for (let kits = 0; kits < 300; kits++) expected += tens(kits) * poissonOf(kits, 100);
	expectWithin(mean(kitsWithUse(many, [1, 3], tens, 10_000)), expected, 1e-9, "");
});

test("where all take as much, the kits are counted together", () => {
	const used = kitsWithUse(many, [2, 2], () => 5, 10_000);
	for (const kits of [80, 100, 130])
		expectWithin(chanceOf(used, 5 + 2 * kits), poissonOf(kits, 100), 1e-12, "");
	expect(chanceOf(used, 206)).toBe(0);
});

test("where no kit is used, what goes by the number of none", () => {
	expect(kitsWithUse([0, 0], [1, 3], () => 4, 100)).toMatchObject({ first: 4 });
});

test("what is beyond the most is left out, and changes nothing below it", () => {
	const whole = kitsWithUse(many, [1, 3], nothing, 10_000);
	const cut = kitsWithUse(many, [1, 3], nothing, 190);
	expectWithin(chanceOf(cut, 180), chanceOf(whole, 180), 1e-15, "");
	expect(chanceOf(whole, 190)).toBeGreaterThan(0.01);
	expect(chanceOf(cut, 250)).toBe(0);
});
