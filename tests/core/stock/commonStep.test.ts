import { expect, test } from "vitest";
import { once } from "../../../src/core/counts/counts.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import {
	amountSetAside,
	commonStep,
	countingSteps,
	finerSteps,
	MOST_AMOUNTS,
	MOST_DESCALED,
	MOST_DESCALING,
} from "../../../src/core/stock/commonStep.ts";
import { MUCH, useSetAside } from "../../../src/core/stock/useSetAside.ts";
import { expectWithin } from "../../expectWithin.ts";

const day = (kits: number[], kind: RoundsOfDay["kind"] = "in_rounds"): RoundsOfDay =>
	({ kind, starts: kits.map((_, i) => 60 * i), kits, byKind: [kits] }) as RoundsOfDay;
/** Nine kits on two days: hardly ever more than 9 + 8 × 3 + 8 = 41. */
const nine = [day([1, 3]), day([5])];
const FINE = 0.123457;
const rates = { perDay: 3, perRound: 5, perLoad: [2, 4], perKit: [1, FINE], perDescale: 7 };
const ofKits = { perDay: 0, perRound: 0, perLoad: [0, 0], perKit: [1], perDescale: 0 };

/** A descaling of 1, of which there are hardly ever more than 8 where no kits are expected, and the rest by the day. */
test.each([
	["rounds times amounts of 1,500,000: exactly", 40, 37_500, 1, 1, 0],
	["and more are shared", 40, 37_501, 1, 37.501, 5],
	["without descalings exactly", 40, 37_501, 0, 37_501, 0],
	["of 30 rounds exactly, to 50,000 amounts", 30, 50_000, 1, 1, 0],
	["of 30 rounds never shared over a week", 30, 100_000, 1, 2, 0],
	["of a hundred rounds", 100, 6000, 1, 1, 0],
	["and more in halves are shared", 100, 10_000, 0.5, 10, 5],
	["more than a hundred rounds are shared", 101, 6000, 1, 6, 5],
])("descalings: %s", (_what, rounds, most, perDescale, size, more) => {
	const ofDay = { ...ofKits, perLoad: [0], perKit: [0], perDay: most - 8 * perDescale };
	const days = [day(new Array(rounds).fill(0))];
	const steps = commonStep({ rates: { ...ofDay, perDescale }, days });
	expectWithin(steps.size, size, 1e-12, "a step");
	expect(steps.more).toBe(more);
});

/** The same of a round that uses 1. */
test.each([
	["31 rounds exactly, to 50,000 amounts", 31, 50_000, 1, 0],
	["and more are shared", 31, 50_001, 50.001, 5],
	["30 rounds never over a week", 30, 100_000, 2, 0],
])("without descalings: %s", (_what, rounds, most, size, more) => {
	const of = { ...ofKits, perLoad: [0], perKit: [0], perRound: 1, perDay: most - 8 };
	const steps = commonStep({ rates: of, days: [day(new Array(rounds).fill(0))] });
	expectWithin(steps.size, size, 1e-12, "a step");
	expect(steps.more).toBe(more);
});

/** Shared steps are a thousandth of the most that is looked for. */
test.each([
	["three rounds, each with a descaling", rates, nine, 6 + 3 * 12 + 41 * 7],
	["as many rounds as kits", rates, nine.map(({ kits }) => day([...kits], "after_each_use")), 785],
	["no more rounds than kits", rates, [day(new Array(12).fill(0))], 3 + 8 * 12 + 8 * 7],
	["no day, no round", { ...rates, perLoad: [0, FINE] }, [], 8 * (1 + FINE)],
])("%s: the most that use may come to", (_what, of, days, most) => {
	const steps = commonStep({ rates: of, days });
	expectWithin(steps.size, most / 1000, 1e-15 * most, "a step");
	expect([steps.more, steps.most]).toEqual([5, 3000]);
});

test.each([
	["methods that have loads of their own: to 5,000 exactly", { ...ofKits, perDay: 4959 }, 1, 0],
	["and more are shared", { ...ofKits, perDay: 4960 }, 5.001, 5],
	["one kind and one method: exactly", { ...ofKits, perLoad: [0], perDay: 4960 }, 1, 0],
	["kinds that differ", { ...ofKits, perLoad: [0], perKit: [1, 2], perDay: 4960 }, 5.042, 5],
	["kinds that are alike", { ...ofKits, perLoad: [0], perKit: [2, 2], perDay: 4960 }, 2, 0],
])("%s", (_what, of, size, more) => {
	const steps = commonStep({ rates: of, days: [day([9])] });
	expectWithin(steps.size, size, 1e-12, "a step");
	expect(steps.more).toBe(more);
});

test.each([
	["every rate a multiple", [2, 3], 100, 8, 1, 0],
	["the largest of these", [4, 6, 0], 100, 8, 2, 0],
	["a rate alone", [0.5], 100, 8, 0.5, 0],
	["nothing that is used", [0, 0], 100, 8, 1, 0],
	["no finer than quantities are typed", [1e-7], 0.01, 8, 1e-6, 0],
	["50,000 amounts are told apart", [1], 50_000, 8, 1, 0],
	["more are counted coarsely over a week", [1], 100_000, 7, 2, 0],
	["and shared over more days", [1], 100_000, 8, 100, 5],
	["however many", [1], 100_000, 366, 100, 5],
])("%s", (_what, amounts, most, days, size, more) => {
	const steps = countingSteps(amounts, most, days);
	expectWithin(steps.size, size, 1e-12 * size, "a step");
	expect([steps.more, steps.most]).toEqual([more, more === 0 ? 100_000 : 3000]);
});

test.each([
	["whole steps despite rounding", [0.3], 100, 7, 2.1, 7],
	["beside many steps rounding is more", [1], 100, 7, 2e6 + 0.5, 2e6 + 1],
	["beside few it is not", [1], 100, 7, 2.4, 2.4],
	["nearly none is none", [1], 100, 7, 5e-7, 0],
	["coarse steps are rounded up", [1], 100_000, 7, 3, 2],
	["shared ones are not", [1], 100_000, 8, 150, 1.5],
	["where nothing is used, up", [0], 100, 7, 0.5, 1],
])("an amount in steps: %s", (_what, amounts, most, days, amount, steps) => {
	expect(countingSteps(amounts, most, days).of(amount)).toBe(steps);
});

test.each([
	["exact where these are few", [1], 5000, 2000, 1, 0, 7500],
	["exact where they are parts", [0.5], 2500, 2000, 0.5, 0, 7500],
	["no longer exact where these are more", [0.5], 2501, 1000, 2.501, 5, 1500],
	["else so many of what is enough", [1], 5001, 2000, 2.5005, 5, 3000],
])("finer steps: %s", (_what, amounts, enough, count, size, more, most) => {
	expect(finerSteps(amounts, enough, count)).toMatchObject({ size, more, most });
});

test("what is set aside is the count's, and steps more on the safe side", () => {
	const steps = { size: 0.5, of: Number, more: 5, most: Number.POSITIVE_INFINITY };
	expect(amountSetAside(once(0.5), 0.6, steps)).toBe(3);
});

const parted = (count: number) => count.toLocaleString("en").replaceAll(",", "\u202f");

test.each([
	["possible amounts", `more than ${parted(MOST_AMOUNTS)} possible amounts`],
	["rounds with descalings", `more than ${MOST_DESCALING} rounds with descalings`],
	["rounds times amounts", `are more than ${parted(MOST_DESCALED)},`],
	["rounds times levels", `rounds times levels of births are more than ${MUCH},`],
])("what is set aside says beyond how many %s it is rounded up", (_what, words) => {
	expect(useSetAside.rounding).toContain(words);
});
