import { expect, test } from "vitest";
import { type Counts, mean } from "../../../src/core/counts/counts.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import type { Steps } from "../../../src/core/stock/commonStep.ts";
import { usedOverDays } from "../../../src/core/stock/usedOverDays.ts";

const level = { mean: 0.6, levelShape: 20, daySpread: 0 };
const known: RoundsOfDay = {
	kind: "in_rounds",
	starts: [420, 1140],
	kits: [0.3, 0.3],
	byKind: [[0.3, 0.3]],
};
const forecast: RoundsOfDay = { ...known, forecast: { level, sure: [[0, 0]] } };
/** Ten for a kit and one for a descaling, which over many days is hardly any of all. */
const rates = { perDay: 0, perRound: 0, perLoad: [0], perKit: [10] };
const steps: Steps = { size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY };

function used(day: RoundsOfDay, days: number, perDescale: number, descaleEvery: number): Counts {
	const all = Array.from({ length: days }, () => day);
	const use = { rates: { ...rates, perDescale }, days: all, loads: soaks(3), descaleEvery };
	return usedOverDays(use, steps);
}

test.each([
	[2, "known", known],
	[40, "known", known],
	[2, "forecast", forecast],
	[40, "forecast", forecast],
] as const)("descalings over %d days, births %s", (days, _, day) => {
	const without = used(day, days, 0, 3);
	// Never descaled, what a descaling takes is used on no day.
	expect(used(day, days, 1, 0)).toEqual(without);
	const rounds = meanOf(days, day);
	const more = mean(used(day, days, 1, 3)) - mean(without);
	// A third of the rounds, and up to the one that is begun.
	expect(more).toBeGreaterThan(rounds / 3 - 0.01);
	expect(more).toBeLessThan(rounds / 3 + 0.7);
});

/** Rounds that run, births at their average. */
function meanOf(days: number, { kits }: RoundsOfDay): number {
	return days * kits.reduce((sum, each) => sum - Math.expm1(-each), 0);
}
