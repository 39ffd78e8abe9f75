import { describe, expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { commonStep } from "../../../src/core/stock/commonStep.ts";
import type { UseInputs } from "../../../src/core/stock/useInputs.ts";
import { useExpected, useSetAside } from "../../../src/core/stock/useSetAside.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";
import { everyPattern, meanOf, quantileOf } from "./everyPattern.ts";

const day = (...byKind: number[][]): RoundsOfDay => {
	const kits = (byKind[0] ?? []).map((_, i) =>
		byKind.reduce((sum, kind) => sum + (kind[i] as number), 0),
	);
	return { kind: "in_rounds", starts: kits.map((_, i) => 60 * i), kits, byKind };
};
/** Use of 21 rounds of a mean of so many kits, of which some in one load, by adding round to round. */
function added(mean: number, useOf: (kits: number) => number, most: number): Float64Array {
	let all = Float64Array.of(1, ...new Float64Array(most));
	for (let round = 0; round < 21; round++) {
		const next = new Float64Array(most + 1);
		for (let kits = 0, p = Math.exp(-mean); kits < 25; kits++, p *= mean / kits)
			for (let use = useOf(kits), i = 0; i + use <= most; i++)
				next[i + use] = (next[i + use] as number) + p * (all[i] as number);
		all = next;
	}
	return all;
}

test("so many thousand amounts as may come in a week are told apart to the last", () => {
	const rates = { perDay: 0, perRound: 401, perLoad: [149], perKit: [361], perDescale: 0 };
	const days = Array.from({ length: 7 }, () => day([1.2, 1.2, 1.2]));
	const use = { rates, days, loads: soaks(3), descaleEvery: 0 };
	const of = (kits: number) => (kits === 0 ? 0 : 401 + 149 * Math.ceil(kits / 3) + 361 * kits);
	let [chance, enough] = [0, -1];
	const amounts = added(1.2, of, 24_000);
	while (chance < 0.95) chance += amounts[++enough] as number;
	expect(answerOf(useSetAside, { ...use, confidence: 0.95 })).toBe(enough);
});

const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
const levels = [0.5, 0.8, 0.9, 0.95, 0.99];

const twoDays = [day([0.25, 0.175]), day([0.6, 1.2])];
const cases: readonly (readonly [string, Partial<UseInputs> & { rates: UseInputs["rates"] }])[] = [
	["a day", { rates: { ...none, perDay: 3 } }],
	["a round", { rates: { ...none, perRound: 2 } }],
	["a load", { rates: { ...none, perLoad: [2] }, loads: soaks(2) }],
	["a kit", { rates: { ...none, perKit: [10] } }],
	["a descaling", { rates: { ...none, perDescale: 1 }, descaleEvery: 3 }],
	["a descaling with every round", { rates: { ...none, perDescale: 1 }, descaleEvery: 1 }],
	["a descaling never", { rates: { ...none, perDescale: 1, perKit: [1] }, descaleEvery: 0 }],
	["fractions", { rates: { ...none, perRound: 0.25, perKit: [0.1], perDay: 0.5 } }],
	[
		"all together",
		{
			rates: { perDay: 1, perRound: 2, perLoad: [3], perKit: [5], perDescale: 7 },
			descaleEvery: 2,
			loads: soaks(2),
		},
	],
	[
		"large amounts beside small ones",
		{ rates: { ...none, perRound: 10, perLoad: [1], perKit: [0.01] }, loads: soaks(2) },
	],
	[
		"larger ones still for descalings",
		{
			rates: { ...none, perRound: 2000, perLoad: [300], perDescale: 50_000 },
			descaleEvery: 2,
			loads: soaks(2),
		},
	],
	["descalings with kits", { rates: { ...none, perKit: [2], perDescale: 5 }, descaleEvery: 2 }],
	[
		"descalings with rounds and loads",
		{
			rates: { ...none, perRound: 1, perLoad: [1], perDescale: 3 },
			descaleEvery: 3,
			loads: soaks(1),
		},
	],
	[
		"two methods, each with loads of its own",
		{
			rates: { ...none, perRound: 1, perLoad: [3, 2] },
			loads: [...soaks(2), { method: "boiling", kits: 3 }],
		},
	],
	["no method that has loads", { rates: { ...none, perRound: 1, perLoad: [] }, loads: [] }],
	[
		"rounds that hardly ever run",
		{ rates: { ...none, perRound: 1, perKit: [1] }, days: [day([1e-6, 0.5, 0])] },
	],
	[
		"no kits at all",
		{
			rates: { ...none, perRound: 1, perKit: [1], perDay: 2, perDescale: 9 },
			days: [day([0, 0])],
			descaleEvery: 1,
		},
	],
	[
		"two kinds of kit",
		{ rates: { ...none, perRound: 1, perKit: [2, 5] }, days: [day([0.3, 0.2], [0.1, 0.4])] },
	],
	[
		"two kinds and descalings",
		{
			rates: { ...none, perLoad: [1], perKit: [2, 3], perDescale: 4 },
			days: [day([0.3, 0.2], [0.1, 0.4])],
			descaleEvery: 2,
			loads: soaks(1),
		},
	],
];

describe("use set aside is the quantile of every pattern of kits", () => {
	test.each(cases)("for %s", (_what, change) => {
		const inputs: UseInputs = { days: twoDays, loads: soaks(3), descaleEvery: 0, ...change };
		const used = everyPattern(inputs);
		for (const confidence of levels)
			expectWithin(
				answerOf(useSetAside, { ...inputs, confidence }),
				quantileOf(used, confidence),
				1e-9,
				"pieces",
			);
	});
});

describe("use expected is the mean of every pattern of kits", () => {
	test.each(cases.filter(([, { rates }]) => rates.perDescale === 0))("for %s", (_what, change) => {
		const inputs: UseInputs = { days: twoDays, loads: soaks(3), descaleEvery: 0, ...change };
		expectWithin(answerOf(useExpected, inputs), meanOf(everyPattern(inputs)), 1e-7, "pieces"); // patterns rarer than 1e-13 are left out
	});

	test("descalings expected are rounds expected ÷ rounds between them", () => {
		const rounds = [0.25, 0.175, 0.6, 1.2].reduce((sum, m) => sum + 1 - Math.exp(-m), 0);
		const inputs = {
			days: twoDays,
			loads: soaks(3),
			descaleEvery: 7,
			rates: { ...none, perDescale: 2 },
		};
		expectWithin(answerOf(useExpected, inputs), (2 * rounds) / 7, 1e-12, "L");
	});
});

describe("after each use", () => {
	const oneByOne = (kits: number): RoundsOfDay => ({
		kind: "after_each_use",
		kits: [kits],
		byKind: [[kits]],
	});
	test.each([
		["kits of two days are one Poisson count", { ...none, perKit: [2] }, 0, 3, 2 * 6],
		["each kit is a round and a load", { ...none, perRound: 1, perLoad: [2] }, 0, 3, 3 * 6],
		["a descaling with the first of every four", { ...none, perDescale: 1 }, 4, 3, 2],
	])("%s", (_what, rates, descaleEvery, mean, expected) => {
		const inputs = {
			days: [oneByOne(mean / 2), oneByOne(mean / 2)],
			loads: soaks(3),
			descaleEvery,
			rates,
		};
		expectWithin(answerOf(useSetAside, { ...inputs, confidence: 0.95 }), expected, 1e-12, "pieces");
	});
});

describe("the common step", () => {
	test.each([
		["whole numbers", { ...none, perRound: 2, perKit: [3] }, 1],
		["a common part", { ...none, perRound: 4, perKit: [6] }, 2],
		["a half alone", { ...none, perKit: [0.5] }, 0.5],
		["tenths", { ...none, perKit: [0.3], perRound: 0.2 }, 0.1],
		["nothing", none, 1],
	])("of %s", (_what, rates, step) => {
		expectWithin(commonStep({ rates, days: twoDays }).size, step, 1e-12, "pieces");
	});

	test("awkward fractions are counted a little to the safe side, never less", () => {
		const rates = { ...none, perRound: 0.333333, perKit: [1] };
		const inputs = { days: twoDays, loads: soaks(3), descaleEvery: 0, rates };
		for (const confidence of levels) {
			const exact = quantileOf(everyPattern(inputs), confidence);
			const found = answerOf(useSetAside, { ...inputs, confidence });
			expect(found).toBeGreaterThanOrEqual(exact - 1e-9);
			expect(found).toBeLessThanOrEqual(exact * 1.01);
		}
	});
});

describe("the same days, asked of something else, have another answer", () => {
	const rates = { perDay: 1, perRound: 2, perLoad: [3], perKit: [5], perDescale: 700 };
	const asked = { days: twoDays, loads: soaks(1), descaleEvery: 3, rates, confidence: 0.95 };
	const answer = (inputs: typeof asked) => answerOf(useSetAside, inputs);
	test.each([
		["loads", { loads: soaks(2) }],
		["rounds between descalings", { descaleEvery: 1 }],
		["use a day", { rates: { ...rates, perDay: 2 } }],
		["use a round", { rates: { ...rates, perRound: 4 } }],
		["use a load", { rates: { ...rates, perLoad: [4] } }],
		["use a kit", { rates: { ...rates, perKit: [7] } }],
		["use a descaling", { rates: { ...rates, perDescale: 900 } }],
		["chance", { confidence: 0.5 }],
	])("%s", (_, change) => {
		const before = answer(asked);
		const changed = answer({ ...asked, ...change });
		expect(changed).not.toBe(before);
		// As if these days had never been asked for.
		expect(changed).toBe(answer({ ...asked, ...change, days: structuredClone(twoDays) }));
	});
});
