import { describe, expect, test } from "vitest";
import { chanceEnough } from "../../../src/core/counts/chanceEnough.ts";
import { always, mean } from "../../../src/core/counts/counts.ts";
import {
	vinegarExpected,
	vinegarPerDescale,
	vinegarSetAside,
} from "../../../src/core/vinegar/vinegarPerDescale.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

describe("vinegar for one descaling", () => {
	test.each([
		[2, 2.5, 5, 1],
		[2, 5, 5, 2],
		[3, 2.5, 10, 0.75],
		[2, 0.1, 80, 0.0025],
	])("bath %d L at %d %% from %d %%: %d L", (bathLitres, wantedAcidPct, vinegarAcidPct, litres) => {
		expectWithin(
			answerOf(vinegarPerDescale, { bathLitres, wantedAcidPct, vinegarAcidPct }),
			litres,
			1e-12,
			"L",
		);
	});

	test("weaker vinegar than wanted is refused at its setting", () => {
		expect(
			refusalOf(vinegarPerDescale, { bathLitres: 2, wantedAcidPct: 6, vinegarAcidPct: 5 }),
		).toMatchObject([
			{ code: "vinegar-too-weak", received: "5 %", file: "unit.csv", column: "vinegar_acid_pct" },
		]);
	});
});

describe("vinegar over rounds", () => {
	test.each([
		[7, 7, 1],
		[3.5, 7, 0.5],
		[0, 7, 0],
		[5, 0, 0],
	])("%d rounds expected, every %d: %d L", (rounds, everyRounds, litres) => {
		expect(answerOf(vinegarExpected, { rounds, everyRounds, litresEach: 1 })).toBe(litres);
	});

	test.each([
		[0, 7, 0],
		[1, 7, 1],
		[7, 7, 1],
		[8, 7, 2],
		[14, 7, 2],
		[3, 1, 3],
		[100, 0, 0],
	])("%d rounds set aside, every %d: %d L", (rounds, everyRounds, litres) => {
		expect(answerOf(vinegarSetAside, { rounds, everyRounds, litresEach: 1 })).toBe(litres);
	});

	test.each([
		[8, 7, 1.5, (8 / 7) * 1.5],
		[3, 1, 2, 6],
		[100, 0, 2, 0],
	])(
		"of %d rounds, every %d, at %d L: %d L may come in the mean",
		(rounds, every, each, litres) => {
			const may = vinegarSetAside.follows?.turned(
				{ counts: always(rounds), size: 1 },
				{ rounds, everyRounds: every, litresEach: each },
			);
			expectWithin(may ? mean(may.counts) * may.size : Number.NaN, litres, 1e-12, "L");
			// Some amount comes for sure.
			expectWithin(may ? chanceEnough(may, 1000) : Number.NaN, 1, 1e-12, "");
		},
	);
});
