import { calculation } from "../calculation.ts";
import { sources } from "../sources.ts";

interface Inputs {
	readonly births: number;
	readonly kitsPer100Births: number;
}

const BIRTHS = 100;

/** Kits used on a day: each birth uses one with the same chance, apart from all others. */
export const kitUses = calculation<Inputs, number>({
	key: "kits_used_expected",
	label: "Kits used, expected",
	unit: "kits",
	formula: "Births × kits used per 100 births ÷ 100.",
	source: sources.thinning,
	inputs: {
		births: { label: "Births expected", unit: "births", min: 0 },
		kitsPer100Births: {
			label: "Kits used per 100 births",
			unit: "kits/100 births",
			min: 0,
			max: 100,
		},
	},
	example: { inputs: { births: 10, kitsPer100Births: 4.4 }, result: 0.44, within: 1e-12 },
	compute: ({ births, kitsPer100Births }) => (births * kitsPer100Births) / BIRTHS,
});
