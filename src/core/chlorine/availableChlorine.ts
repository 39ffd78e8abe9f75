import { calculation } from "../calculation.ts";
import { fixed } from "../fixed.ts";
import { type Refusal, refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import type { StrengthMeasure } from "./strengthMeasures.ts";

/** Available chlorine in a product, in the terms in which it is measured out. */
export type Strength =
	| { readonly form: "liquid"; readonly gramsPerLitre: number }
	| { readonly form: "powder"; readonly gramsPerGram: number }
	| { readonly form: "tablet"; readonly gramsPerTablet: number };

export interface Label {
	readonly form: "liquid" | "powder" | "tablet";
	readonly strength: number;
	readonly measure: StrengthMeasure;
	/** kg/L; needed only for a liquid whose strength is by weight. */
	readonly density: number | null;
}

/** 1 % weight in volume is 1 g in 100 mL. */
export const GRAMS_PER_LITRE_PER_PCT = 10;
export const MILLIGRAMS_PER_GRAM = 1000;
/** Of Cl2, by which available chlorine is told. */
export const GRAMS_PER_MOLE = 70.906;
/** Over NaOCl, 74.442 g/mol. */
export const CHLORINE_PER_HYPOCHLORITE = GRAMS_PER_MOLE / 74.442;
/** A litre that can set free one litre of chlorine gas holds 3.17 g of it. */
export const GRAMS_PER_LITRE_PER_DEGREE = 3.17;
/** Heavier than any solution; a figure above it is in the wrong measure. */
const MOST_GRAMS_PER_LITRE = 1000;

/** Strength on a label → available chlorine: g/L of a liquid, g per g of powder, g per tablet. */
export const availableChlorine = calculation<Label, Strength>({
	key: "available_chlorine",
	label: say`Available chlorine in the product`,
	unit: say`g/L, g/g or g/tablet`,
	formula: say`% w/v × ${GRAMS_PER_LITRE_PER_PCT}; mg/L ÷ ${MILLIGRAMS_PER_GRAM}; % w/w × ${GRAMS_PER_LITRE_PER_PCT} × density; sodium hypochlorite % × ${fixed(CHLORINE_PER_HYPOCHLORITE, 4)} first; chlorometric degrees × ${fixed(GRAMS_PER_LITRE_PER_DEGREE, 2)}; powder % w/w ÷ 100; tablets as labelled.`,
	source: sources.chlorometric,
	inputs: {
		form: { label: say`Form`, unit: "" },
		strength: { label: say`Strength on the label`, unit: say`in its measure`, min: 0 },
		measure: { label: say`Strength is in`, unit: "" },
		density: { label: say`Density`, unit: "kg/L" },
	},
	example: {
		inputs: { form: "liquid", strength: 12, measure: "chlorometric_degree", density: null },
		result: { form: "liquid", gramsPerLitre: 38.04 },
		within: 1e-9,
	},
	compute: (label) => {
		if (label.form === "tablet") return tabletStrength(label);
		return label.form === "powder" ? powderStrength(label) : liquidStrength(label);
	},
});

function tabletStrength({ strength, measure }: Label): Strength | Refusal {
	if (measure === "g_per_tablet") return { form: "tablet", gramsPerTablet: strength };
	return wrongMeasure(
		measure,
		"g_per_tablet",
		say`The strength of a tablet cannot be in ${measure}; look for grams of available chlorine in a tablet on its label.`,
	);
}

function powderStrength({ strength, measure }: Label): Strength | Refusal {
	const grams = {
		pct_w_w: strength / 100,
		pct_naocl_w_w: (strength / 100) * CHLORINE_PER_HYPOCHLORITE,
	}[measure as string];
	if (grams === undefined)
		return wrongMeasure(
			measure,
			"pct_w_w",
			say`The strength of a powder cannot be in ${measure}; look for % w/w (grams in 100 g) on its label.`,
		);
	return grams <= 1 ? { form: "powder", gramsPerGram: grams } : tooStrong(strength, measure);
}

function liquidStrength({ strength, measure, density }: Label): Strength | Refusal {
	if (measure === "g_per_tablet")
		return wrongMeasure(
			measure,
			"pct_w_v",
			say`The strength of a liquid cannot be in ${measure}; look for % w/v (grams in 100 mL) on its label.`,
		);
	const byWeight = measure === "pct_w_w" || measure === "pct_naocl_w_w";
	if (byWeight && density === null)
		return refuse({
			code: "density-missing",
			received: say`no density`,
			allowed: say`a density in kg/L, from the label or the maker`,
			message: say`The strength is by weight (w/w), so the density of the liquid is needed to know what a litre holds.`,
		});
	const gramsPerLitre = perLitre(strength, measure, density ?? 1);
	return gramsPerLitre <= MOST_GRAMS_PER_LITRE
		? { form: "liquid", gramsPerLitre }
		: tooStrong(strength, measure);
}

function perLitre(strength: number, measure: StrengthMeasure, density: number): number {
	const percent = strength * GRAMS_PER_LITRE_PER_PCT;
	switch (measure) {
		case "pct_w_v":
			return percent;
		case "pct_w_w":
			return percent * density;
		case "pct_naocl_w_v":
			return percent * CHLORINE_PER_HYPOCHLORITE;
		case "pct_naocl_w_w":
			return percent * CHLORINE_PER_HYPOCHLORITE * density;
		case "mg_per_l":
			return strength / MILLIGRAMS_PER_GRAM;
		case "chlorometric_degree":
			return strength * GRAMS_PER_LITRE_PER_DEGREE;
		default:
			return strength;
	}
}

function wrongMeasure(received: string, allowed: string, message: string): Refusal {
	return refuse({ code: "wrong-measure", received, allowed, message });
}

function tooStrong(strength: number, measure: string): Refusal {
	return refuse({
		code: "too-strong",
		received: `${strength} ${measure}`,
		allowed: say`less chlorine than the product weighs`,
		message: say`${strength} ${measure} would be more chlorine than the product can hold; look at the measure on the label.`,
	});
}
