import { expect, test } from "vitest";
import { openBirths, thinned } from "../backtest/thinnedBirths.ts";
import { wholeRegister } from "../backtest/wholeRegister.ts";
import { randomNumbers } from "./randomNumbers.ts";

/**
 * One-day forecasts of the whole register, from open daily births thinned to a unit's
 * size. Counts are whole numbers, so the range shown holds more than nine of ten days
 * where births are few; a count placed at random within its own step does not.
 */
test.each(
	openBirths.flatMap(({ name, births, firstDay }, i) =>
		[1, 5, 20].map((mean): [string, number, readonly number[], string, number] => [
			name,
			mean,
			births,
			firstDay,
			i,
		]),
	),
)(
	"%s thinned to %d a day: nine of ten days inside, no worse than either simple way",
	(_name, mean, births, firstDay, i) => {
		const random = randomNumbers(7_000 + 100 * mean + i);
		const scored = wholeRegister(thinned(births, mean, random), firstDay, random);
		expect(scored.placedCoverage).toBeGreaterThan(0.86);
		expect(scored.placedCoverage).toBeLessThan(0.94);
		expect(scored.overPlainMean).toBeGreaterThanOrEqual(0);
		expect(scored.overLastWeek).toBeGreaterThanOrEqual(0);
	},
);
