import { expect, test } from "vitest";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { ofOneKind } from "../../../src/core/kits/ofOneKind.ts";
import { expectWithin } from "../../expectWithin.ts";

const meanOf = (kits: Float64Array) => kits.reduce((sum, chance, n) => sum + chance * n, 0);

/** n choose k, by its definition. */
const ways = (n: number, k: number): number => (k === 0 ? 1 : (ways(n - 1, k - 1) * n) / k);

test.each([
	[1, 0.3],
	[2, 0.5],
	[7, 0.1],
	[30, 0.9],
])("%d kits, each with chance %d: binomial", (kits, share) => {
	const all = new Float64Array(kits + 1);
	all[kits] = 1;
	const some = ofOneKind(all, share);
	for (let k = 0; k <= kits; k++) {
		const expected = ways(kits, k) * share ** k * (1 - share) ** (kits - k);
		expectWithin(some[k] ?? 0, expected, 1e-13, "chance");
	}
});

/** A thinned Poisson count is Poisson (textbook). */
test.each([
	[3, 0.2],
	[120, 0.75],
])("of a Poisson count with mean %d the part %d is Poisson", (mean, share) => {
	const chancesOf = (meanCount: number) => {
		const { first, chance } = poisson(meanCount);
		const all = new Float64Array(first + chance.length);
		all.set(chance, first);
		return all;
	};
	const some = ofOneKind(chancesOf(mean), share);
	const expected = chancesOf(share * mean);
	expected.forEach((chance, k) => {
		expectWithin(some[k] ?? 0, chance, 1e-12, "chance");
	});
});

test("weights stay weights, and what is not seen ends the list", () => {
	const weights = Float64Array.from({ length: 2001 }, (_, n) => 3 * 0.99 ** n);
	const some = ofOneKind(weights, 0.1);
	const sum = (list: Float64Array) => list.reduce((all, weight) => all + weight, 0);
	expectWithin(sum(some), sum(weights), 1e-9, "uses");
	expectWithin(meanOf(some), 0.1 * meanOf(weights), 1e-9, "uses");
	expect(some.length).toBeLessThan(600);
});

test("all are of the kind: the same list; none is: none waits", () => {
	const kits = Float64Array.of(0.5, 0.25, 0.25);
	expect(ofOneKind(kits, 1)).toBe(kits);
	expect([...ofOneKind(kits, 0)]).toEqual([1]);
});
