import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { GRAMS_PER_LITRE_PER_PCT, type Strength } from "./availableChlorine.ts";

/** Strength as a label states it: % for liquids (w/v) and powder (w/w), grams for a tablet. */
export function asLabelled(strength: Strength): number {
	if (strength.form === "liquid") return strength.gramsPerLitre / GRAMS_PER_LITRE_PER_PCT;
	return strength.form === "powder" ? strength.gramsPerGram * 100 : strength.gramsPerTablet;
}

export const shownStrength = calculation<{ strength: Strength }, number>({
	key: "strength_shown",
	label: say`Strength`,
	unit: say`% or g/tablet`,
	formula: say`Grams per litre ÷ 10 for a liquid, grams per gram × 100 for powder, grams in a tablet.`,
	source: sources.onePercent,
	inputs: { strength: { label: say`Available chlorine`, unit: say`g/L, g/g or g/tablet` } },
	example: {
		inputs: { strength: { form: "liquid", gramsPerLitre: 35 } },
		result: 3.5,
		within: 1e-12,
	},
	compute: ({ strength }) => asLabelled(strength),
});
