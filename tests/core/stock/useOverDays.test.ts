import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { amountSetAside, commonStep } from "../../../src/core/stock/commonStep.ts";
import { mostNumbers, type Numbers } from "../../../src/core/stock/mostNumbers.ts";
import { roundsLoadsAndKits } from "../../../src/core/stock/roundsLoadsAndKits.ts";
import { stepsUsed } from "../../../src/core/stock/stepsUsed.ts";
import { usedByKits } from "../../../src/core/stock/usedByKits.ts";
import { useExpected, useSetAside } from "../../../src/core/stock/useSetAside.ts";
import { expectWithin } from "../../expectWithin.ts";
import { always } from "../../properties/workbooks.ts";
import { answerOf } from "../answerOf.ts";

const rate = fc.constantFrom(0, 0, 0.25, 1, 2, 3);
const KINDS = 2;
const rates = fc.record({
	perDay: rate,
	perRound: rate,
	perLoad: rate.map((each) => [each]),
	perKit: fc.array(rate, { minLength: KINDS, maxLength: KINDS }),
	perDescale: fc.constantFrom(0, 0, 0, 1),
});
const mean = fc.constantFrom(0, 0.02, 0.4, 1.3, 2);
const kinds = (rounds: number) =>
	fc.array(fc.array(mean, { minLength: rounds, maxLength: rounds }), {
		minLength: KINDS,
		maxLength: KINDS,
	});
const added = (byKind: number[][]) =>
	(byKind[0] as number[]).map((_, round) => byKind.reduce((sum, of) => sum + (of[round] ?? 0), 0));
const inRounds = kinds(3).map(
	(byKind): RoundsOfDay => ({ kind: "in_rounds", starts: [0, 1, 2], kits: added(byKind), byKind }),
);
const oneByOne = kinds(1).map(
	(byKind): RoundsOfDay => ({ kind: "after_each_use", kits: added(byKind), byKind }),
);

/** A few days over and over, as a plan has them. */
const days = fc
	.oneof(inRounds, oneByOne)
	.chain((first) =>
		fc
			.array(first.kind === "in_rounds" ? inRounds : oneByOne, { maxLength: 2 })
			.chain((others) =>
				fc.array(fc.constantFrom(first, ...others), { minLength: 1, maxLength: 9 }),
			),
	);
const use = fc.record({
	rates,
	days,
	loads: fc.constantFrom(1, 2, 3).map(soaks),
	descaleEvery: fc.constantFrom(0, 2),
});

describe("use from each day's use is the use of the days as one", () => {
	test("expected", () => {
		fc.assert(
			fc.property(use, ({ days: all, ...inputs }) => {
				const sum = all.reduce(
					(use, day) => use + answerOf(useExpected, { ...inputs, days: [day] }),
					0,
				);
				const asOne = answerOf(useExpected, { ...inputs, days: all });
				expectWithin(sum, asOne, 1e-12 * (1 + asOne), "pieces");
			}),
			always(300),
		);
	});

	test("set aside", () => {
		fc.assert(
			fc.property(use, fc.constantFrom(0.5, 0.8, 0.95, 0.999), (inputs, confidence) => {
				const steps = commonStep(inputs);
				const used = usedByKits(inputs, steps) ?? stepsUsed(inputs, steps);
				expect(answerOf(useSetAside, { ...inputs, confidence })).toBe(
					amountSetAside(used, confidence, steps),
				);
			}),
			always(300),
		);
	});
});

describe.each([
	["rounds, loads and descalings", { rounds: true, loads: true, kits: false }],
	["rounds, kits and descalings", { rounds: true, loads: false, kits: true }],
	["rounds, loads, kits and descalings", { rounds: true, loads: true, kits: true }],
])("%s are followed together", (_, goesBy) => {
	const chanceOf = (mean: number, kits: number) => poissonChances(mean)[kits] ?? 0;
	test.each([
		[[0.4], 1, 2],
		[[0.4, 1.3], 2, 2],
		[[2, 0.02, 0.9], 3, 1],
		[[1.3, 0.4, 2], 1, 7],
		[[0.4, 0, 2], 2, 3],
	])("rounds of %j kits, %d in a load, a descaling every %d", (means, kitsInLoad, every) => {
		const useOf = ({ rounds, moreLoads, kits }: Numbers) =>
			31 * rounds +
			(goesBy.loads ? 7 * moreLoads : 0) +
			(goesBy.kits ? 3 * kits : 0) +
			1000 * Math.ceil(rounds / every);
		const most = mostNumbers(means, kitsInLoad, goesBy);
		const found = roundsLoadsAndKits([{ means, weight: 1 }], kitsInLoad, most, useOf);
		const wanted = new Map<number, number>();
		const go = (round: number, all: Numbers, chance: number) => {
			if (round === means.length) {
				const amount = useOf(all);
				wanted.set(amount, (wanted.get(amount) ?? 0) + chance);
				return;
			}
			for (let kits = 0; kits <= MOST_KITS; kits++) {
				const runs = Number(kits > 0);
				const after = {
					rounds: all.rounds + runs,
					moreLoads: all.moreLoads + Math.ceil(kits / kitsInLoad) - runs,
					kits: all.kits + kits,
				};
				go(round + 1, after, chance * chanceOf(means[round] as number, kits));
			}
		};
		go(0, { rounds: 0, moreLoads: 0, kits: 0 }, 1);
		for (const [amount, chance] of wanted)
			expectWithin(found.chance[amount - found.first] ?? 0, chance, 1e-13, "chance");
	});
});

const MOST_KITS = 22;

function poissonChances(mean: number): number[] {
	const chances = [Math.exp(-mean)];
	for (let kits = 1; kits <= MOST_KITS; kits++)
		chances.push(((chances[kits - 1] as number) * mean) / kits);
	return chances;
}
