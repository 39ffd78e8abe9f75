import { calculation, derive, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import type { Counts } from "../../counts/counts.ts";
import { mixedCount } from "../../counts/mixedCount.ts";
import { poissonCount } from "../../counts/poissonCount.ts";
import type { Forecast } from "../../forecast/forecast.ts";
import { interval } from "../../forecast/scorecard.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { forecastSheet } from "../../sheets/forecast.ts";
import { sources } from "../../sources.ts";
import type { DayFigures } from "../dayFigures.ts";
import { sizeOf } from "../sizeOf.ts";
import type { UnitFigures } from "../unitFigures.ts";

const poisson = poissonCount(say`Births`, say`births`, sources.poissonBirths);
const mixed = mixedCount(say`Births`, say`births`);

/** Of 0 to 4, each as likely as the others: a quarter, or a twentieth, lies outside on either side. */
const inExample = { 0.5: { low: 1, high: 3 }, 0.9: { low: 0, high: 4 } };

const bound = (end: "low" | "high", share: keyof typeof inExample) =>
	calculation<{ counts: Counts }, number>({
		key: `${end}_${share * 100}`,
		label:
			end === "low"
				? say`${share * 100} of 100 such days, from`
				: say`${share * 100} of 100 such days, to`,
		unit: say`births`,
		formula:
			end === "low"
				? say`Lower end of the interval with equal chances outside on both sides.`
				: say`Upper end of the interval with equal chances outside on both sides.`,
		source: sources.discounted,
		inputs: { counts: { label: say`Births: how likely each number is`, unit: say`births` } },
		example: {
			inputs: { counts: { first: 0, chance: Float64Array.of(0.2, 0.2, 0.2, 0.2, 0.2) } },
			result: inExample[share][end],
			within: 0,
		},
		compute: ({ counts }) => interval(counts, share)[end],
	});

const low50 = bound("low", 0.5);
const high50 = bound("high", 0.5);
const low90 = bound("low", 0.9);
const high90 = bound("high", 0.9);

/** Births of each day with their bands. */
export function forecastTable(
	{ forecast }: UnitFigures,
	days: readonly DayFigures[],
): ComputedTable<typeof forecastSheet> {
	const ledBy = forecast && valueIn(forecast)?.ledBy;
	return onDemand(forecastSheet, () => days.map((day) => rowOf(day, ledBy)));
}

function rowOf(
	day: DayFigures,
	ledBy: Forecast["ledBy"] | undefined,
): ComputedRow<typeof forecastSheet> {
	const { births, level } = day;
	const counts = level
		? derive(mixed, {
				poissonMean: nameFigure(say`Own figure`, 0),
				forecastMean: births,
				size: sizeOf([day]),
			})
		: derive(poisson, { mean: births });
	return {
		date: nameFigure(say`Date`, day.date),
		births_expected: births,
		taken_from: nameFigure(say`From`, takenFrom(day, ledBy)),
		low_50: derive(low50, { counts }),
		high_50: derive(high50, { counts }),
		low_90: derive(low90, { counts }),
		high_90: derive(high90, { counts }),
	};
}

/** Where a day's births are from, as the sheet says it. */
export const OWN_FIGURE = say`your figure`;
export const BIRTHS_A_DAY = say`births a day`;
export const MOVED_BY_REGISTER = say`births a day, moved by the register`;

function takenFrom(
	{ births: { origin }, level }: DayFigures,
	ledBy: Forecast["ledBy"] | undefined,
) {
	if (level) return ledBy === "settings" ? MOVED_BY_REGISTER : say`forecast from the register`;
	return "place" in origin && origin.place.file === "births.csv" ? OWN_FIGURE : BIRTHS_A_DAY;
}
