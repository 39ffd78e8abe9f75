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

const kept = (asked: number | null, enough: number | null) => ({
	asked_of_100: nameFigure("Asked", asked),
	one_less: nameFigure("The next smaller", 3),
	one_less_of_100: nameFigure("Enough", enough),
});

test("of the smallest that can be asked it is said how to ask for it, of less it is not", () => {
	const words = (enough: number) => leverWords("rounds", facts, kept(95, enough));
	expect(words(50)).toMatch(/if that will do, lower how sure/);
	expect(words(49.9)).toMatch(/on 49\.9 of 100 only/);
});

test.each([
	["asked for", kept(null, 40)],
	["enough", kept(95, null)],
])("where nobody knows how often it is %s, nothing is said of less", (_, of) => {
	expect(leverWords("rounds", facts, of)).toBe("");
});

test.each([
	["of each of several days, of which all together are known", true, 2, /^Each day prepares/],
	["of each of several days, of which not all are known", true, undefined, /^A descaling takes/],
	["of the plan, or of its only day", false, 2, /^A descaling takes/],
] as const)("vinegar %s", (_, isDay, forAllDays, words) => {
	const said = leverWords("vinegar_litres", { ...facts, isDay, forAllDays }, kept(null, null));
	expect(said).toMatch(words);
});

test.each(["boiled_litres", "boiled_buckets"] as const)(
	"%s are those of whole loads",
	(measure) => {
		expect(leverWords(measure, facts, kept(null, null))).toMatch(
			/^Each load takes all its buckets/,
		);
	},
);
