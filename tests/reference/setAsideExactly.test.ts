import { dnbinom, dpois, ppois, qnbinom, qpois } from "lib-r-math.js";
import { describe, expect, test } from "vitest";
import type { Amounts } from "../../src/core/amounts.ts";
import { chanceEnough, nextSmaller } from "../../src/core/counts/chanceEnough.ts";
import type { LevelOfDay } from "../../src/core/counts/counts.ts";
import { soaks } from "../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { useSetAside } from "../../src/core/stock/useSetAside.ts";
import { answerOf } from "../core/answerOf.ts";
import { expectWithin } from "../expectWithin.ts";

/** A day whose kits are each reprocessed by themselves; all of them by the level of births, or none. */
function day(kits: number, level?: LevelOfDay): RoundsOfDay {
	const forecast = level && { level, sure: [[0], [0]] };
	const byKind = [[kits / 4], [(3 * kits) / 4]];
	return { kind: "after_each_use", kits: [kits], byKind, ...(forecast && { forecast }) };
}

// Multiples of 3.1 where a kit's parts are added up, so that no amount is rounded.
const rates = { perDay: 3.1, perRound: 0.3, perLoad: [0.2], perKit: [18.1, 18.1], perDescale: 124 };

/** Each kit takes 18.1 + 0.3 + 0.2; the first, and every `every`th after it, a descaling of 124. */
const useOf = (kits: number, days: number, every: number) =>
	18.6 * kits + (every === 0 ? 0 : 124 * Math.ceil(kits / every)) + 3.1 * days;

// R's own quantiles: the number of kits is Poisson, or negative binomial at a Gamma level.
describe.each([1, 7, 40])("kits reprocessed one by one over %d days", (length) => {
	const settings = { loads: soaks(3), rates };
	test.each([0, 9])("known days, a descaling every %d", (descaleEvery) => {
		const days = Array.from({ length }, () => day(5));
		for (const confidence of [0.5, 0.9, 0.99]) {
			const found = answerOf(useSetAside, { ...settings, days, descaleEvery, confidence });
			const kits = Number(qpois(confidence, 5 * length));
			expectWithin(found, useOf(kits, length, descaleEvery), 1e-6, `at ${confidence}`);
		}
	});

	test.each([0.8, 4, 60])("at a level of shape %d", (levelShape) => {
		const level = { mean: 8, levelShape, daySpread: 0 };
		const days = Array.from({ length }, () => day(5, level));
		for (const confidence of [0.5, 0.9, 0.99]) {
			const inputs = { ...settings, days, descaleEvery: 9, confidence };
			const kits = Number(qnbinom(confidence, levelShape, undefined, 5 * length));
			expectWithin(answerOf(useSetAside, inputs), useOf(kits, length, 9), 1e-6, `at ${confidence}`);
		}
	});
});

test("of amounts too fine to be told apart what is set aside is exact, and said to be as sure as it is", () => {
	const fine = { ...rates, perKit: [18.123457], perRound: 0, perLoad: [0] };
	const inputs = { loads: soaks(3), days: [day(40)], descaleEvery: 0, rates: fine };
	const found = answerOf(useSetAside, { ...inputs, confidence: 0.9 });
	const exact = 3.1 + 18.123457 * Number(qpois(0.9, 40));
	expectWithin(found, exact, 1e-9, "pieces");
	const amounts = useSetAside.mayCome?.({ ...inputs, confidence: 0.9 }) as Amounts;
	const [enough, less] = [chanceEnough(amounts, found), nextSmaller(amounts, found) ?? 0];
	expectWithin(enough, Number(ppois(Number(qpois(0.9, 40)), 40)), 1e-12, "chance");
	expectWithin(less, found - 18.123457, amounts.size, "pieces");
	expect(chanceEnough(amounts, less)).toBeLessThan(0.9);
	// A whole pack may be far more than is set aside.
	expectWithin(chanceEnough(amounts, 3 * found), 1, 1e-8, "chance");
});

test.each([
	["nothing is set aside", 0.5, 0],
	["one kit is", 0.95, 1],
])(
	"the most that may come is listed in no more steps than a list holds, where %s",
	(_what, confidence, kits) => {
		const level = { mean: 1, levelShape: 1e-4, daySpread: 0 };
		const fine = {
			...rates,
			perDay: 0,
			perKit: [18_123.456789],
			perRound: 0,
			perLoad: [0],
			perDescale: 0,
		};
		const forecast = { level, sure: [[0.05], [0.05]] };
		const days = [{ ...day(0.4, level), forecast }];
		const inputs = { loads: soaks(3), days, descaleEvery: 0, rates: fine, confidence };
		const amounts = useSetAside.mayCome?.(inputs) as Amounts;
		expect(amounts.counts.chance.length).toBeLessThanOrEqual(400_001);
		const found = answerOf(useSetAside, inputs);
		expectWithin(found, kits * 18_123.456789, 1e-6, "pieces");
		expect(chanceEnough(amounts, found)).toBeGreaterThanOrEqual(confidence);
	},
);

test("kinds that take different amounts are told apart", () => {
	const inputs = { loads: soaks(3), days: [day(5)], descaleEvery: 0, confidence: 0.9 };
	const apart = { ...rates, perKit: [18.1, 0] };
	expect(answerOf(useSetAside, { ...inputs, rates: apart })).toBeLessThan(
		answerOf(useSetAside, { ...inputs, rates }),
	);
});

describe("amounts too fine to be told apart, in rounds, are each of those that kits may come to", () => {
	const fine = { perDay: 0.25, perRound: 7.654321, perLoad: [4.142857], perKit: [2.345678] };
	const means = [0.7, 1.9];
	const inRounds = (forecast?: RoundsOfDay["forecast"]): RoundsOfDay => ({
		kind: "in_rounds",
		starts: [480, 960],
		kits: means,
		byKind: [means],
		...(forecast && { forecast }),
	});
	/** Each number of kits of both rounds with its chance by R, in order of what they use. */
	const listed = (at: (mean: number, kits: number) => number, descaling: number) => {
		const uses: { use: number; chance: number }[] = [];
		for (let a = 0; a < 40; a++)
			for (let b = 0; b < 40; b++) {
				const run = [a, b].filter((kits) => kits > 0);
				const use =
					0.25 +
					7.654321 * run.length +
					4.142857 * (Math.ceil(a / 2) + Math.ceil(b / 2)) +
					2.345678 * (a + b) +
					(run.length > 0 ? descaling : 0);
				uses.push({ use, chance: at(means[0] as number, a) * at(means[1] as number, b) });
			}
		return uses.sort((one, other) => one.use - other.use);
	};

	/** The first use that is enough, how surely it is, and the next smaller one. */
	const reached = (uses: { use: number; chance: number }[], confidence: number) => {
		let [at, sum] = [-1, 0];
		while (sum < confidence) sum += uses[++at]?.chance as number;
		const enough = uses[at]?.use as number;
		const below = uses.filter(({ use }) => use < enough - 1e-9);
		const upTo = uses.filter(({ use }) => use < enough + 1e-9);
		const chance = upTo.reduce((all, { chance }) => all + chance, 0);
		return { enough, chance, less: below.at(-1)?.use ?? 0 };
	};

	test.each([
		["without descalings", 0, 0],
		["with a descaling", 1.234567, 5],
	])("%s", (_what, perDescale, descaleEvery) => {
		const uses = listed((mean, kits) => Number(dpois(kits, mean)), perDescale);
		for (const confidence of [0.5, 0.9, 0.99]) {
			const { enough, chance, less } = reached(uses, confidence);
			const rates = { ...fine, perDescale };
			const inputs = { loads: soaks(2), rates, days: [inRounds()], descaleEvery, confidence };
			const found = answerOf(useSetAside, inputs);
			expectWithin(found, enough, 1e-9, `at ${confidence}`);
			const amounts = useSetAside.mayCome?.(inputs) as Amounts;
			expectWithin(chanceEnough(amounts, found), chance, 1e-12, "chance");
			expectWithin(nextSmaller(amounts, found) ?? 0, less, amounts.size, "litres");
		}
	});
});

test("what rounds use for their kits alone is counted by these also where births are nearly known", () => {
	const level = { mean: 5, levelShape: 300, daySpread: 0 };
	const means = [0.5, 0.9];
	const days: RoundsOfDay[] = [
		{
			kind: "in_rounds",
			starts: [480, 960],
			kits: means,
			byKind: [means],
			forecast: { level, sure: [[0, 0]] },
		},
	];
	const gauze = { perDay: 0, perRound: 0, perLoad: [0], perKit: [10], perDescale: 0 };
	const inputs = { loads: soaks(2), rates: gauze, days, descaleEvery: 0, confidence: 0.95 };
	expect(answerOf(useSetAside, inputs)).toBe(40);
	const amounts = useSetAside.mayCome?.(inputs) as Amounts;
	let exact = 0;
	for (const kits of [0, 1, 2, 3, 4]) {
		// Two rounds are negative binomial together: R's own chance of each number.
		exact += Number(dnbinom(kits, 300, 300 / 301.4));
		expectWithin(chanceEnough(amounts, 10 * kits), exact, 1e-9, "chance");
	}
});
