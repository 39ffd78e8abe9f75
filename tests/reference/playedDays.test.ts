import { expect, test } from "vitest";
import { playedDays } from "../backtest/units/playedDays.ts";
import type { Unit } from "../backtest/units/unit.ts";
import { expectWithin } from "../expectWithin.ts";
import { poissonDraw } from "./draws.ts";
import { meanOfBatches, randomNumbers } from "./randomNumbers.ts";

/** The unit of the worked example: 0.6 uses a day, three rounds of 110 minutes, kits that keep. */
const unit: Unit = {
	name: "example",
	kitsPer100: 10,
	kits: 2,
	reprocessing: "in_rounds",
	starts: [7 * 60, 14 * 60, 21 * 60],
	minutes: { round: 110, kit: 0, load: 0 },
	kitsInLoad: 3,
	readyLifeDays: 1_000_000,
	hands: "without limit",
	nights: false,
};

/** Needs of 1,000 that find none ready, and kits gone out of date a day. */
function played(change: Partial<Unit>, birthsPerDay: number) {
	const random = randomNumbers(17);
	const batches = Array.from({ length: 40 }, () => {
		const births = Array.from({ length: 4000 }, () => poissonDraw(birthsPerDay, random));
		const days = playedDays({ ...unit, ...change }, births, random).slice(30);
		const sum = (of: (day: (typeof days)[0]) => number) =>
			days.reduce((all, day) => all + of(day), 0);
		return {
			unmet: (1000 * sum((day) => day.unmet)) / sum((day) => day.kits_used),
			expired: sum((day) => day.kits_expired) / days.length,
		};
	});
	return {
		unmet: meanOfBatches(batches.map((batch) => batch.unmet)),
		expired: meanOfBatches(batches.map((batch) => batch.expired)),
	};
}

// The closed forms are derived in the reference notes and checked elsewhere; here they check the simulation.
test.each<[string, Partial<Unit>, number]>([
	["in rounds, one kit", { kits: 1 }, 136.681],
	["in rounds, two kits", {}, 11.5022],
	["after each use, one kit", { kits: 1, reprocessing: "after_each_use" }, 44.7989],
])("the simulation itself: %s", (_what, change, per1000) => {
	const { unmet } = played(change, 6);
	expectWithin(unmet.mean, per1000, 4 * unmet.standardError, "per 1,000");
	expect(unmet.standardError).toBeLessThan(0.05 * per1000);
});

test("without uses every kit goes out of date once in its life and the day on which it waits for a round", () => {
	const { expired } = played({ readyLifeDays: 7, kits: 3 }, 0);
	// Ready in the morning of day 0, used through day 7, renewed in the morning of day 8.
	expectWithin(expired.mean, 3 / 8, 0.003, "kits a day");
});
