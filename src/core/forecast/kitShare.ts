import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

interface Inputs {
	readonly priorPer100: number;
	readonly births: number;
	readonly uses: number;
	readonly weight: number;
}

/** Kits used per 100 births as the register teaches them, starting from the figure in the settings (Beta-binomial). */
export const kitShare = calculation<Inputs, number>({
	key: "kits_used_per_100_births",
	label: say`Kits used per 100 births, learned`,
	unit: say`kits/100 births`,
	formula: say`100 × (starting share × weight + kits used) ÷ (weight + births), over the days on which both are recorded.`,
	source: sources.kitShare,
	inputs: {
		priorPer100: {
			label: say`Kits used per 100 births, to start from`,
			unit: say`kits/100 births`,
			min: 0,
			max: 100,
		},
		births: { label: say`Births recorded`, unit: say`births`, min: 0 },
		uses: { label: say`Kits used, recorded`, unit: say`kits`, min: 0 },
		weight: { label: say`Births the starting share counts for`, unit: say`births`, min: 0 },
	},
	example: {
		inputs: { priorPer100: 10, births: 300, uses: 18, weight: 100 },
		result: 7,
		within: 1e-12,
	},
	compute: ({ priorPer100, births, uses, weight }) =>
		weight + births === 0
			? priorPer100
			: Math.min(100, (100 * ((priorPer100 / 100) * weight + uses)) / (weight + births)),
});
