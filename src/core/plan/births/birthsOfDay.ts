import { calculation, derive, type Figure, nameFigure, refusedFigure } from "../../calculation.ts";
import type { LevelOfDay } from "../../counts/counts.ts";
import { dayAhead, type Forecast } from "../../forecast/forecast.ts";
import { firstReasons } from "../../outcome.ts";
import { partOf } from "../../partOf.ts";
import { givenFigure } from "../../read/cellFigure.ts";
import type { ReadTable } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type BirthsRow, birthsSheet } from "../../sheets/births.ts";
import { sources } from "../../sources.ts";
import type { IsoDate } from "../../values/date.ts";

const { label, unit } = birthsSheet.columns.births;

/** Mean births of a day and, where they are forecast, how sure the forecast is. */
export interface BirthsOfDay {
	readonly mean: Figure<number>;
	/** What a forecast does not know of them; undefined where the figure is the unit's own. */
	readonly level: Figure<LevelOfDay> | undefined;
}

const ahead = calculation<{ forecast: Forecast; date: IsoDate }, LevelOfDay>({
	key: "births_ahead",
	label: say`Births by the forecast, average`,
	unit: say`births`,
	formula: say`Level of the register × factor of the weekday. The level stays; it is known less the further ahead, up to 28 days: from then on not less still.`,
	source: sources.discounted,
	inputs: {
		forecast: { label: say`Forecast from the register`, unit: say`births/day` },
		date: { label: say`Date`, unit: "" },
	},
	example: {
		// 28 ÷ 14 births a day, × 1.5 on a Monday; what is known shrinks by half on each of 3 days.
		inputs: {
			forecast: {
				ledBy: "register",
				discount: 0.5,
				daySpread: 0.2,
				a: 28,
				b: 14,
				lastDay: "2027-03-12",
				factors: [0.9, 1.5, 0.9, 0.9, 0.9, 0.9, 1],
				logLikelihood: 0,
				recordedDays: 14,
			},
			date: "2027-03-15",
		},
		result: { mean: 3, levelShape: 3.5, daySpread: 0.2 },
		within: 1e-12,
	},
	compute: ({ forecast, date }) => dayAhead(forecast, date),
});

const meanAhead = partOf<LevelOfDay, "mean">(
	ahead,
	"mean",
	say`Births by the forecast, average`,
	say`births`,
);

/**
 * Mean births on a day: the unit's own figure for it, else the forecast from the
 * register, else births a day from the settings.
 *
 * A row that cannot be read leaves its day without a figure; where even the date
 * cannot be read no day is touched, and the problem stands in the list.
 */
export function birthsOfDay(
	date: IsoDate,
	table: ReadTable<BirthsRow>,
	forecast: Figure<Forecast> | undefined,
	birthsPerDay: Figure<number>,
): BirthsOfDay {
	const place = { file: birthsSheet.file, line: null, column: "births" };
	const refused = table.badRows.filter((row) => row.value.date === date);
	if (refused.length > 0) {
		const problems = firstReasons(refused.flatMap((row) => row.problems));
		return { mean: refusedFigure(label, unit, place, ...problems), level: undefined };
	}
	const row = table.rows.find((r) => r.value.date === date);
	const own = row && givenFigure(birthsSheet, row, "births");
	if (own) return { mean: own, level: undefined };
	if (!forecast) return { mean: birthsPerDay, level: undefined };
	const level = derive(ahead, { forecast, date: nameFigure(say`Date`, date) });
	return { mean: derive(meanAhead, { whole: level }), level };
}
