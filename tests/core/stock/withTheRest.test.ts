import { expect, test } from "vitest";
import type { Amounts } from "../../../src/core/amounts.ts";
import { chanceEnough } from "../../../src/core/counts/chanceEnough.ts";
import { type Counts, chanceAtMost } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import { oneRound } from "../../../src/core/rounds/roundsOfDay.ts";
import type { UseInputs } from "../../../src/core/stock/useInputs.ts";
import { withTheRest } from "../../../src/core/stock/withTheRest.ts";
import { expectWithin } from "../../expectWithin.ts";

const rates = { perDay: 0, perRound: 0, perLoad: [0], perKit: [1], perDescale: 0 };
const useOf = (kits: number): UseInputs => ({
	rates,
	days: [oneRound(kits)],
	loads: soaks(1),
	descaleEvery: 0,
});
const all = poisson(40);
const enough = (counts: Amounts["counts"], kits: number) => chanceEnough({ counts, size: 1 }, kits);
const upTo = (most: number): Counts => ({
	first: all.first,
	chance: all.chance.slice(0, most - all.first + 1),
});

test("what nothing is left out of stays as it is", () => {
	expect(withTheRest(all, 1, useOf(40))).toBe(all);
});

test.each([30, 44, 60])(
	"beyond %d kits that were followed, others are about as likely as they are",
	(most) => {
		const found = withTheRest(upTo(most), 1, useOf(40));
		for (let kits = all.first; kits <= most; kits++)
			expect(enough(found, kits)).toBe(chanceAtMost(all, kits));
		for (let kits = most + 1; kits < 90; kits++)
			expectWithin(enough(found, kits), chanceAtMost(all, kits), 0.005, "chance");
		expectWithin(enough(found, 1e6), 1, 1e-12, "chance");
	},
);

test.each([
	["about as much as comes ends before them", 3],
	["about as much as comes begins far beyond them", 4000],
])("all of it is there where %s", (_what, kits) => {
	const found = withTheRest(upTo(44), 1, useOf(kits));
	expectWithin(enough(found, 1e6), 1, 1e-12, "chance");
	expect(enough(found, 44)).toBe(chanceAtMost(all, 44));
	if (kits === 3) expectWithin(enough(found, 45), 1, 1e-12, "chance");
});
