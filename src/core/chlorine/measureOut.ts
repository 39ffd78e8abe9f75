import { calculation } from "../calculation.ts";
import { type Refusal, refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { upTo } from "../upTo.ts";
import { GRAMS_PER_LITRE_PER_PCT, type Strength } from "./availableChlorine.ts";
import { tooWeak } from "./tooWeak.ts";

/** One preparation: what to measure, into how much water, and what it makes. */
export interface Preparation {
	readonly litres: number;
	/** Product, rounded up to what can be measured. */
	readonly quantity: number;
	readonly measure: "mL" | "g" | "tablet";
	readonly waterLitres: number;
	readonly strengthMadePct: number;
}

interface Inputs {
	readonly strength: Strength;
	readonly litres: number;
	readonly targetPct: number;
	readonly stepMl: number;
	readonly stepGrams: number;
}

export const ML_PER_LITRE = 1000;

/**
 * Product and water for one preparation, made UP TO its litres, never added to them.
 *
 * The product is rounded up to the measure's step and tablets to whole ones, so
 * the mix is never weaker than wanted; the strength it then has is given.
 */
export const measureOut = calculation<Inputs, Preparation>({
	key: "measure_out",
	label: say`Product for one preparation`,
	unit: say`mL, g or tablets`,
	formula: say`Litres × strength wanted ÷ strength of the product. Made up to the full volume: the water is the litres less the liquid product.`,
	source: sources.madeUpTo,
	rounding: say`Up to the smallest step of the measure; tablets up to whole ones.`,
	caution: say.safety`Measure the water first and put the product into it. Never with vinegar, other acids or ammonia. Good ventilation, gloves, eye protection, apron.`,
	inputs: {
		strength: { label: say`Available chlorine in the product`, unit: say`g/L, g/g or g/tablet` },
		litres: { label: say`Litres of a preparation`, unit: "L", min: 0.001 },
		targetPct: { label: say`Strength of the soak`, unit: "%", min: 1e-6 },
		stepMl: { label: say`Smallest step of the measuring jug`, unit: "mL", min: 1e-6 },
		stepGrams: { label: say`Smallest step of the scale or spoon`, unit: "g", min: 1e-6 },
	},
	example: {
		inputs: {
			strength: { form: "liquid", gramsPerLitre: 35 },
			litres: 5.5,
			targetPct: 0.5,
			stepMl: 10,
			stepGrams: 1,
		},
		result: {
			litres: 5.5,
			quantity: 790,
			measure: "mL",
			waterLitres: 4.71,
			strengthMadePct: 0.502727,
		},
		within: 1e-6,
	},
	compute: ({ strength, litres, targetPct, stepMl, stepGrams }) => {
		const grams = litres * targetPct * GRAMS_PER_LITRE_PER_PCT;
		const made = (gramsMeasured: number) => gramsMeasured / litres / GRAMS_PER_LITRE_PER_PCT;
		if (strength.form === "liquid")
			return liquid(strength.gramsPerLitre, litres, targetPct, stepMl);
		if (strength.form === "powder") {
			if (strength.gramsPerGram * 100 < targetPct)
				return tooWeak(strength.gramsPerGram * 100, targetPct);
			const quantity = upTo(grams / strength.gramsPerGram, stepGrams);
			return {
				litres,
				quantity,
				measure: "g",
				waterLitres: litres,
				strengthMadePct: made(quantity * strength.gramsPerGram),
			};
		}
		if (strength.gramsPerTablet === 0) return noChlorine();
		const quantity = upTo(grams / strength.gramsPerTablet, 1);
		return {
			litres,
			quantity,
			measure: "tablet",
			waterLitres: litres,
			strengthMadePct: made(quantity * strength.gramsPerTablet),
		};
	},
});

function liquid(
	gramsPerLitre: number,
	litres: number,
	targetPct: number,
	stepMl: number,
): Preparation | Refusal {
	const stockPct = gramsPerLitre / GRAMS_PER_LITRE_PER_PCT;
	if (stockPct < targetPct) return tooWeak(stockPct, targetPct);
	const all = litres * ML_PER_LITRE;
	const quantity = Math.min(upTo((all * targetPct) / stockPct, stepMl), all);
	return {
		litres,
		quantity,
		measure: "mL",
		waterLitres: (all - quantity) / ML_PER_LITRE,
		strengthMadePct: (quantity * stockPct) / all,
	};
}

function noChlorine(): Refusal {
	return refuse({
		code: "no-chlorine",
		received: say`0 g per tablet`,
		allowed: say`more than 0 g`,
		message: say`The tablets are said to hold no chlorine; look at the label.`,
	});
}
