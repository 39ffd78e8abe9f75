import { expect, test } from "vitest";
import { expectedBeyond } from "../../../src/core/counts/poisson.ts";
import { type RoundOfPlan, RoundsGoneThrough } from "../../../src/core/kits/roundsGoneThrough.ts";
import { UnmetByLapses } from "../../../src/core/kits/unmetByLapses.ts";
import { flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

/** One round a day at noon, of fifteen hours for each kit; one use on average from midnight to noon. */
const plan = new RoundsGoneThrough({
	kind: "in_rounds",
	starts: [720],
	length: { perRound: 0, perKit: 900, loads: [] },
	plannedMinutes: 900,
	usesPerDay: [2, 2],
	hourShares: flatDay,
	life: null,
});
/** Of two kits none was used by midnight 50 times in 100, one 30 times; then one goes out of date 60 and 25 times in 100. */
const lapses = {
	used: Float64Array.of(0.5, 0.3, 0.2),
	given: (used: number) =>
		used === 0
			? { first: 0, chance: Float64Array.of(0.4, 0.6) }
			: { first: 1, chance: Float64Array.of(0.25) },
};
const unmet = new UnmetByLapses(2, plan, plan.rounds[0] as RoundOfPlan, lapses);
/** None, one and both are away so much likelier than by uses alone. */
const likelier = [-0.3, 0.3 - 0.075, 0.075];
/** Mean uses that find none of so many kits in a time with so many on average. */
const beyond = (kits: number, mean: number) => expectedBeyond(Math.max(0, kits), mean);
const sum = (of: (there: number) => number, left: number) =>
	likelier.reduce((all, by, away) => all + by * of(Math.max(0, 2 - left - away)), 0);

test.each([0, 1])("without a kit in the round, with %d that wait: until the next", (left) => {
	const expected = sum((there) => beyond(there, 1), left);
	expect(expected).toBeGreaterThan(0.05);
	expectWithin(unmet.more(0, left), expected, 1e-12, "uses");
});

test("with a kit in the round: three hours after midnight it is there again", () => {
	const expected = sum(
		(there) => beyond(there - 1, 0.25) + beyond(there, 1) - beyond(there, 0.25),
		0,
	);
	expectWithin(unmet.more(1, 0), expected, 1e-12, "uses");
	expectWithin(
		unmet.more(0, 0),
		sum((there) => beyond(there, 1), 0),
		1e-12,
		"uses",
	);
});

test("where all wait already nothing more can go unmet", () => {
	expect([unmet.more(0, 2), unmet.more(0, 3)]).toEqual([0, 0]);
});
