import { calculation } from "../../calculation.ts";
import type { LevelOfDay } from "../../counts/counts.ts";
import { spanShape } from "../../counts/spanShape.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { MOST_OBJECTS, memoize } from "../../memoize.ts";
import { flatDay } from "../../rounds/dayClock.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";

interface Inputs {
	readonly reprocessing: Reprocessing;
	readonly levels: readonly LevelOfDay[];
	readonly sure: readonly number[];
}

const onePerson: Reprocessing = {
	kind: "after_each_use",
	usesPerDay: [0.6],
	hourShares: flatDay,
	hands: { people: 1, workMinutes: 110, aloneMinutes: 0 },
	readyLifeDays: 7,
};

const shapeOf = (levels: readonly LevelOfDay[]) =>
	1 / Math.max(1e-12, levels.reduce((sum, day) => sum + 1 / spanShape([day]), 0) / levels.length);

const forecastUses = memoize(
	(reprocessing: Reprocessing, shape: number, sure: readonly number[]): Reprocessing => ({
		...reprocessing,
		forecast: { shape, sure },
	}),
	(reprocessing, shape, sure) => [reprocessing, shape, sure.join()],
	MOST_OBJECTS,
);

/**
 * Where births are forecast, needs that find no kit are mixed over what is not known of
 * them. A need meets what its own day brings, so it is the day's multiplier that counts:
 * 1/shape is the mean of the days' 1/A + 1/r + 1/(A·r).
 */
export const reprocessingOfForecast = calculation<Inputs, Reprocessing>({
	key: "reprocessing_of_forecast",
	label: say`When used kits come back`,
	unit: "",
	formula: say`What is not known of a day's births, its level and its own variation, on average over the forecast days; uses of days with a figure of their own do not go with it.`,
	source: sources.discounted,
	inputs: {
		reprocessing: { label: say`When used kits come back`, unit: "" },
		levels: { label: say`Births of each day, forecast`, unit: say`births` },
		sure: { label: say`Kits used, not by the forecast`, unit: say`kits` },
	},
	example: {
		// 1/20 and 1/10 + 1/5 + 1/50 on average: 0.185.
		inputs: {
			reprocessing: onePerson,
			levels: [
				{ mean: 3, levelShape: 20, daySpread: 0 },
				{ mean: 3, levelShape: 10, daySpread: 0.2 },
			],
			sure: [0],
		},
		result: { ...onePerson, forecast: { shape: 1 / 0.185, sure: [0] } },
		within: 1e-9,
	},
	compute: ({ reprocessing, levels, sure }) => forecastUses(reprocessing, shapeOf(levels), sure),
});
