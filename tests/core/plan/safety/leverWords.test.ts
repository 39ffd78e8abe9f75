import { expect, test } from "vitest";
import { nameFigure } from "../../../../src/core/calculation.ts";
import { type LeverFacts, leverWords } from "../../../../src/core/plan/safety/leverWords.ts";
import type { Measure } from "../../../../src/core/sheets/planMeasures.ts";

const facts: LeverFacts = {
	isDay: false,
	forAllDays: undefined,
	madeEachRound: true,
	canFillSoak: false,
	measured: "tablet",
};

test.each([
	["rounds", 1, 40, "The next smaller, 1 round, is enough on 40 of 100 only."],
	["rounds", 3, 40, "The next smaller, 3 rounds, is enough on 40 of 100 only."],
	["solution_litres", 1, 40, "The next smaller, 1 L, is enough on 40 of 100 only."],
	["chlorine", 1, 40, "The next smaller, 1 tablet, is enough on 40 of 100 only."],
	["chlorine", 4, 98, "4 tablets would already be enough on 98 of 100."],
] as const satisfies readonly [Measure, number, number, string][])(
	"%s, the next smaller %d enough on %d of 100",
	(measure, less, enough, words) => {
		const kept = {
			asked_of_100: nameFigure("Asked", 95),
			one_less: nameFigure("The next smaller", less),
			one_less_of_100: nameFigure("Enough", enough),
		};
		expect(leverWords(measure, facts, kept)).toContain(words);
	},
);
