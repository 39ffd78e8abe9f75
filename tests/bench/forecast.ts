import { discountedFilter } from "../../src/core/forecast/discountedFilter.ts";
import { forecast } from "../../src/core/forecast/forecast.ts";
import { scorecard } from "../../src/core/forecast/scorecard.ts";
import { factorsOf } from "../../src/core/forecast/weekdayFactors.ts";
import { openBirths, thinned } from "../backtest/thinnedBirths.ts";
import { answerOf } from "../core/answerOf.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";
import { against, type Measured, measure, report } from "./measure.ts";

/**
 * Learning the weekday factors, the discount and the level from registers of 1 to 20
 * years: ten years should take less than 100 ms, and time should grow with the days
 * alone. The peer is one pass of the filter, of which a fit takes about fifty.
 */
const YEARS = [1, 2, 5, 10, 20];
const [data] = openBirths;
if (!data) throw new Error("no data");
const rows: Measured[] = [];

for (const perDay of [6, 60]) {
	const unit = thinned(data.births, perDay, randomNumbers(perDay));
	for (const years of YEARS) {
		const register = { firstDay: data.firstDay, counts: unit.slice(0, 365 * years) };
		const name = `${perDay} births a day, ${365 * years} days`;
		const pass = measure(`${name}: one pass`, () =>
			discountedFilter(register.counts, factorsOf(register), { discount: 0.97 }),
		);
		const learn = () =>
			answerOf(forecast, {
				register,
				factors: factorsOf(register),
				birthsPerDay: null,
				priorDays: 7,
			});
		rows.push(pass, against(pass, measure(`${name}: fit`, learn)));
		const learned = learn();
		rows.push(measure(`${name}: scorecard`, () => scorecard(register, learned)));
	}
}
report("forecast", rows);
