import { dnbinom, dpois } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import { type Counts, mean } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { kitsWithUse } from "../../../src/core/stock/kitsWithUse.ts";
import { type KitsOfKinds, type Taken, useOfKinds } from "../../../src/core/stock/useOfKinds.ts";
import { expectWithin } from "../../expectWithin.ts";

const chanceOf = ({ first, chance }: Counts, use: number) => chance[use - first] ?? 0;
const nothing = { once: 0, perGroup: 0, groupOf: 1 };
const known = (...sure: number[]): KitsOfKinds => ({
	shape: Number.POSITIVE_INFINITY,
	byLevel: sure.map(() => 0),
	sure,
});
const ALL = Number.POSITIVE_INFINITY;

/** So many kits of two kinds of which one has the share given: how many are of it (binomial), by Pascal's triangle. */
function ofFirstKind(kits: number, share: number): number[] {
	let chances = [1];
	for (let kit = 0; kit < kits; kit++)
		chances = [...chances, 0].map(
			(p, i) => p * (1 - share) + (i > 0 ? (chances[i - 1] as number) : 0) * share,
		);
	return chances;
}

/** Every number of kits of each of two kinds, by the level and not, in turn. The chances of numbers are lib-r-math.js's. */
function inTurn({ shape, byLevel, sure }: KitsOfKinds, taken: Taken, most: number): Float64Array {
	const [a, b] = taken.perKit as [number, number];
	const [byLevelAll, sureAll] = [byLevel, sure].map(([x, y]) => (x as number) + (y as number)) as [
		number,
		number,
	];
	const chance = new Float64Array(most + 1);
	const share = (of: readonly number[], all: number) => (all === 0 ? 1 : (of[0] as number) / all);
	for (let n = 0; n < 75; n++)
		for (let m = 0; m < 20; m++) {
			const ofNumber =
				Number(dnbinom(n, shape, shape / (shape + byLevelAll))) * Number(dpois(m, sureAll));
			if (ofNumber < 1e-17) continue;
			const groups = Math.ceil((n + m) / taken.groupOf) * taken.perGroup;
			ofFirstKind(n, share(byLevel, byLevelAll)).forEach((p, i) => {
				ofFirstKind(m, share(sure, sureAll)).forEach((q, j) => {
					const some = n + m > 0 ? taken.once + groups : 0;
					const use = some + (i + j) * a + (n + m - i - j) * b;
					if (use <= most) chance[use] = (chance[use] as number) + ofNumber * p * q;
				});
			});
		}
	return chance;
}

describe("of two kinds, as every number of each in turn", () => {
	test.each<[string, Omit<Taken, "perKit">, number[]]>([
		["kits alone", nothing, [1, 3]],
		["one kind that takes nothing", nothing, [0, 3]],
		["what comes with any kit", { ...nothing, once: 4 }, [0, 3]],
		["groups of three", { once: 0, perGroup: 5, groupOf: 3 }, [1, 2]],
		["groups of kits that take nothing", { once: 2, perGroup: 5, groupOf: 4 }, [0, 3]],
		["each kit a group", { once: 0, perGroup: 5, groupOf: 1 }, [0, 3]],
		["more than will come in one group", { once: 1, perGroup: 5, groupOf: 500 }, [1, 2]],
	])("%s", (_, more, perKit) => {
		const kits = { shape: 3, byLevel: [1.5, 0.5], sure: [0.1, 0.4] };
		const exact = inTurn(kits, { perKit, ...more }, 150);
		for (const most of [ALL, 40, 6]) {
			const found = useOfKinds(kits, { perKit, ...more }, most);
			for (let use = 0; use <= Math.min(150, most); use++)
				expectWithin(chanceOf(found, use), exact[use] as number, 1e-12, `${most}: ${use}`);
		}
	});
});

test("kinds that take the same are one: negative binomial by the level, whatever their part of it", () => {
	const kits = { shape: 3.5, byLevel: [4, 1.25], sure: [0, 0] };
	const found = useOfKinds(kits, { perKit: [2, 2], ...nothing }, ALL);
	const nearly = useOfKinds(kits, { perKit: [2, 2 + 1e-13], ...nothing }, ALL);
	for (let n = 0; n < 40; n++) {
		const exact = Number(dnbinom(n, 3.5, 3.5 / (3.5 + 5.25)));
		expectWithin(chanceOf(found, 2 * n), exact, 1e-12, "chance");
		expectWithin(chanceOf(nearly, 2 * n), exact, 1e-12, "chance");
	}
});

test.each([700, 9_000])("of %d kits none at all is no number any more", (kits) => {
	const one = poisson(kits);
	// Those of the second kind never come.
	const found = useOfKinds(known(kits, 0), { perKit: [1, 2], ...nothing }, ALL);
	for (const n of [kits - 100, kits, kits + 200])
		expectWithin(chanceOf(found, n), chanceOf(one, n), 1e-11 * chanceOf(one, n), "chance");
	expect(useOfKinds(known(kits, 0), { perKit: [1, 2], ...nothing }, kits / 2).chance[0]).toBe(0);
});

test("what a group takes may be far beyond what its kits do", () => {
	const found = useOfKinds(
		known(0.1, 0.2),
		{ perKit: [1, 2], once: 0, perGroup: 900, groupOf: 2 },
		ALL,
	);
	// One kit or two are a group, three or four are two: 6 are three of the second kind, or two of each.
	expectWithin(chanceOf(found, 901), 0.1 * Math.exp(-0.3), 1e-15, "chance");
	expectWithin(chanceOf(found, 903), 0.1 * 0.2 * Math.exp(-0.3), 1e-15, "chance");
	expectWithin(
		chanceOf(found, 1806),
		(0.2 ** 3 / 6 + (0.1 ** 2 / 2) * (0.2 ** 2 / 2)) * Math.exp(-0.3),
		1e-15,
		"chance",
	);
});

test("the mean of many kits and of their groups", () => {
	const kits = { shape: 30, byLevel: [5000, 1000], sure: [500, 0] };
	// Of a full group, kits that come lack 3 of 7 on average.
	const groups = (6500 + 3) / 7;
	const found = useOfKinds(kits, { perKit: [1, 2], once: 4, perGroup: 10.25, groupOf: 7 }, ALL);
	expectWithin(mean(found), 4 + 7500 + 10.25 * groups, 1e-6, "steps");
});

test("an amount between two whole ones is shared between them, and none is taken by no kit", () => {
	const found = useOfKinds(
		known(0.2, 0.3),
		{ perKit: [0.5, 1.25], once: 0, perGroup: 1.5, groupOf: 2 },
		ALL,
	);
	const byNumber = kitsWithUse([0.2, 0.3], [0.5, 1.25], (kits) => Math.ceil(kits / 2) * 1.5, ALL);
	expectWithin(mean(found), mean(byNumber), 1e-12, "steps");
	expect(chanceOf(found, 0)).toBeGreaterThanOrEqual(Math.exp(-0.5));
});

test.each<[string, number[], number[]]>([
	["few kits", [0.5, 0.25, 0.1], [1, 2, 5]],
	["kits that take nothing", [0.5, 1.5], [0, 3]],
	["amounts between two steps", [4, 9, 2], [1.25, 2.5, 0.125]],
	["many", [60, 40, 20], [3, 12, 31]],
	["so many that none at all is no number any more", [500, 400], [1, 2]],
])("as number by number: %s", (_, means, perKit) => {
	const seven = (kits: number) => (kits === 0 ? 0 : 7);
	for (const most of [ALL, 900, 60, 8, 7, 3]) {
		const used = useOfKinds(known(...means), { perKit, ...nothing, once: 7 }, most);
		const numberByNumber = kitsWithUse(means, perKit, seven, most);
		expect(used.chance.length).toBeGreaterThan(0);
		for (let use = 0; use < Math.min(most + 1, 3000); use++)
			expectWithin(chanceOf(used, use), chanceOf(numberByNumber, use), 1e-14, `${most}: ${use}`);
	}
});

test("without kits nothing is taken", () => {
	expect(
		useOfKinds(known(0, 0), { perKit: [1, 3], once: 4, perGroup: 2, groupOf: 3 }, 100),
	).toEqual({
		first: 0,
		chance: Float64Array.of(1),
	});
});
