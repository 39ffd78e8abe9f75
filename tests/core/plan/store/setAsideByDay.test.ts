import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectedByDay, setAsideByDay } from "../../../../src/core/plan/store/setAsideByDay.ts";
import type { RoundsOfDay } from "../../../../src/core/rounds/roundsOfDay.ts";
import { useExpected, useSetAside } from "../../../../src/core/stock/useSetAside.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { always } from "../../../properties/workbooks.ts";
import { answerOf } from "../../answerOf.ts";

const rate = fc.constantFrom(0, 0, 0.25, 1, 2, 3);
const KINDS = 2;
const rates = fc.record({
	perDay: rate,
	perRound: rate,
	perLoad: rate,
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
	kitsInLoad: fc.constantFrom(1, 2, 3),
	descaleEvery: fc.constantFrom(0, 2),
});

describe("use from each day's use is the use of the days as one", () => {
	test("expected", () => {
		fc.assert(
			fc.property(use, (inputs) => {
				const asOne = answerOf(useExpected, inputs);
				expectWithin(answerOf(expectedByDay, inputs), asOne, 1e-12 * (1 + asOne), "pieces");
			}),
			always(300),
		);
	});

	test("set aside", () => {
		fc.assert(
			fc.property(use, fc.constantFrom(0.5, 0.8, 0.95, 0.999), (inputs, confidence) => {
				expect(answerOf(setAsideByDay, { ...inputs, confidence })).toBe(
					answerOf(useSetAside, { ...inputs, confidence }),
				);
			}),
			always(300),
		);
	});
});
