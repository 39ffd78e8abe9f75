import { describe, test } from "vitest";
import { lapsedAtMidnight } from "../../src/core/kits/lapsedAtMidnight.ts";
import { UnmetAfterEachUse } from "../../src/core/kits/unmetAfterEachUse.ts";
import { playedDays } from "../backtest/units/playedDays.ts";
import { hourWeights, type Unit } from "../backtest/units/unit.ts";
import { expectWithin } from "../expectWithin.ts";
import { birthsDraw } from "./draws.ts";
import { meanOfBatches, randomNumbers } from "./randomNumbers.ts";

const unit: Omit<Unit, "kits"> = {
	name: "one by one",
	kitsPer100: 100,
	reprocessing: "after_each_use",
	starts: [],
	minutes: { round: 40, kit: 10, load: 20 },
	kitsInLoad: 3,
	readyLifeDays: 7,
	hands: 1,
	nights: true,
};
const BATCHES = 40;
const LEAD_DAYS = 30;

/** Needs without a kit, of 1,000, and the chance of 0, 1, … kits going out of date at a midnight. */
function played(kits: number, usesPerDay: number, days: number) {
	const random = randomNumbers(100 * kits + usesPerDay);
	const batches = Array.from({ length: BATCHES }, () => {
		const births = Array.from({ length: days / BATCHES + LEAD_DAYS }, () =>
			birthsDraw(usesPerDay, Number.POSITIVE_INFINITY, random),
		);
		const run = playedDays({ ...unit, kits }, births, random).slice(LEAD_DAYS);
		const sum = (of: (day: (typeof run)[0]) => number) =>
			run.reduce((all, day) => all + of(day), 0);
		return {
			unmet: (1000 * sum((day) => day.unmet)) / sum((day) => day.kits_used),
			lapsed: Array.from(
				{ length: kits + 1 },
				(_, n) => sum((day) => Number(day.kits_expired === n)) / run.length,
			),
		};
	});
	return {
		unmet: meanOfBatches(batches.map((each) => each.unmet)),
		lapsed: (n: number) => meanOfBatches(batches.map(({ lapsed }) => lapsed[n] as number)),
	};
}

const weights = hourWeights({ ...unit, kits: 1 });
const all = weights.reduce((sum, weight) => sum + weight, 0);

/** Kits that nobody used end together, and a person takes one after the other. */
describe("after each use, kits that go out of date: a simulation that shares no code", () => {
	test.each([
		[1, 0.1, 40_000],
		[2, 0.1, 120_000],
		[3, 0.1, 120_000],
		[2, 0.6, 80_000],
		[2, 1, 40_000],
	])("%d kits, %d uses a day", (kits, usesPerDay, days) => {
		const found = played(kits, usesPerDay, days);
		const lapsed = lapsedAtMidnight(kits, usesPerDay, unit.readyLifeDays);
		lapsed.forEach((chance, n) => {
			const { mean, standardError } = found.lapsed(n);
			expectWithin(chance, mean, 4 * standardError + 0.02 * mean, "chance");
		});
		const expected = new UnmetAfterEachUse({
			kind: "after_each_use",
			usesPerDay: [usesPerDay],
			hourShares: weights.map((weight) => weight / all),
			hands: { people: 1, workMinutes: 70, aloneMinutes: 0 },
			readyLifeDays: unit.readyLifeDays,
		}).per1000(kits);
		const { mean, standardError } = found.unmet;
		expectWithin(expected, mean, 4 * standardError + 0.05 * mean, "per 1,000");
	});
});

test("kits that nobody uses lapse every life and a day, together or apart as they began", () => {
	const lapsed = lapsedAtMidnight(3, 0, 7);
	const perDay = lapsed.reduce((sum, chance, kits) => sum + chance * kits, 0);
	expectWithin(perDay, 3 / 8, 1e-9, "kits");
	expectWithin(
		lapsed.reduce((sum, chance) => sum + chance, 0),
		1,
		1e-9,
		"chance",
	);
});
