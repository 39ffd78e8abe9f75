import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";

interface Inputs {
	readonly uses: number;
	readonly expiries: number;
}

/** Kits that have to go through a round: those used, and those nobody used in time. */
export const kitsToReprocess = calculation<Inputs, number>({
	key: "kits_to_reprocess_expected",
	label: say`Kits to reprocess, average`,
	unit: say`kits`,
	formula: say`Kits used + kits gone out of date.`,
	source: definition,
	inputs: {
		uses: { label: say`Kits used, average`, unit: say`kits`, min: 0 },
		expiries: { label: say`Kits gone out of date, average`, unit: say`kits`, min: 0 },
	},
	example: { inputs: { uses: 0.6, expiries: 0.1 }, result: 0.7, within: 1e-12 },
	compute: ({ uses, expiries }) => uses + expiries,
});
