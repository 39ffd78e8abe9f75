import { calculation, derive, type Figure } from "../calculation.ts";
import type { LevelOfDay } from "../counts/counts.ts";
import { spanShape } from "../counts/spanShape.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { byDate } from "./byDate.ts";
import type { DayDemand } from "./dayDemand.ts";

const sizeOfDays = calculation<{ days: readonly LevelOfDay[] }, number>({
	key: "size_of_days",
	label: say`How sure the forecast is`,
	unit: say`size`,
	formula: say`Days share the level of births: that of two days varies together as much as the earlier one's does. Each day's own variation is added: Σ births ÷ A × (births + 2 × births of later days) + Σ births² × (1 + 1 ÷ A) ÷ r; the squared total divided by it.`,
	source: sources.discounted,
	inputs: { days: { label: say`Births of each day, forecast`, unit: say`births` } },
	example: {
		// (9 ÷ 20 + 2 × 9 ÷ 20 + 9 ÷ 10) ÷ 36 is 1 ÷ 16.
		inputs: {
			days: [
				{ mean: 3, levelShape: 20, daySpread: 0 },
				{ mean: 3, levelShape: 10, daySpread: 0 },
			],
		},
		result: 16,
		within: 1e-12,
	},
	compute: ({ days }) => Math.min(spanShape(days), AS_GOOD_AS_KNOWN),
});

/** Days without any births to come are as good as known. */
const AS_GOOD_AS_KNOWN = 1e12;

/** Size of the negative binomial of forecast days together. */
export function sizeOf(days: readonly Pick<DayDemand, "date" | "level">[]): Figure<number> {
	const forecast = days.filter((day) => day.level);
	return derive(sizeOfDays, {
		days: byDate(
			say`Births of each day, forecast`,
			say`births`,
			forecast,
			(day) => day.level as Figure<LevelOfDay>,
		),
	});
}
