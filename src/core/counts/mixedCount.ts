import { type Calculation, calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import type { Counts } from "./counts.ts";
import { delaporte } from "./delaporte.ts";

interface Inputs {
	/** Mean of the days that are Poisson. */
	readonly poissonMean: number;
	/** Mean of the days that are forecast; they share one uncertain level. */
	readonly forecastMean: number;
	readonly size: number;
}

/**
 * Counts of which a part is forecast: Poisson, and negative binomial with the
 * size of the forecast days together. Days forecast from one register share its
 * uncertainty; `spanShape` says how much of it their total has.
 */
export function mixedCount(label: string, unit: string): Calculation<Inputs, Counts> {
	return calculation<Inputs, Counts>({
		key: "mixed_count",
		label: say`${label}: how likely each number is`,
		unit,
		formula: say`Days with a figure of their own: Poisson. Forecast days together: negative binomial with their mean and the forecast's size. Both added up exactly.`,
		source: sources.discounted,
		inputs: {
			poissonMean: { label: say`${label}, days with a figure of their own`, unit, min: 0 },
			forecastMean: { label: say`${label}, forecast days`, unit, min: 0 },
			size: { label: say`How sure the forecast is`, unit: say`size`, min: 0 },
		},
		example: {
			inputs: { poissonMean: 0.1, forecastMean: 0.1, size: 1 },
			// Poisson 0.904837, 0.0904837, …; with size 1 the other is 1 ÷ 1.1, and each the one before ÷ 11.
			result: {
				first: 0,
				chance: Float64Array.of(
					0.8225795,
					0.1570379,
					0.0183891,
					0.0018088,
					0.0001679,
					0.0000153,
					0.0000014,
				),
			},
			within: 1e-6,
		},
		compute: ({ poissonMean, forecastMean, size }) => delaporte(poissonMean, size, forecastMean),
	});
}
