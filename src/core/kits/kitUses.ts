import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

interface Inputs {
	readonly births: number;
	readonly kitsPer100Births: number;
}

const BIRTHS = 100;

/** Kits used on a day (thinning of the births): each birth uses one with the same chance, apart from all others. */
export const kitUses = calculation<Inputs, number>({
	key: "kits_used_expected",
	label: say`Kits used, average`,
	unit: say`kits`,
	formula: say`Births × kits used per 100 births ÷ 100.`,
	source: sources.thinning,
	inputs: {
		births: { label: say`Births`, unit: say`births`, min: 0 },
		kitsPer100Births: {
			label: say`Kits used per 100 births`,
			unit: say`kits/100 births`,
			min: 0,
			max: 100,
		},
	},
	example: { inputs: { births: 10, kitsPer100Births: 4.4 }, result: 0.44, within: 1e-12 },
	compute: ({ births, kitsPer100Births }) => (births * kitsPer100Births) / BIRTHS,
});
