import { calculation } from "../calculation.ts";
import { type Refusal, refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import type { Label, Strength } from "./availableChlorine.ts";
import { likelySlip } from "./likelySlip.ts";

interface Inputs {
	/** As the label's number says, not faded. */
	readonly available: Strength;
	readonly form: Label["form"];
	readonly strength: number;
	readonly measure: Label["measure"];
	/** Whether a person looked at the label again and it does say so. */
	readonly confirmed: "yes" | "no";
}

/** Between these lies every product of the unit's kind that is sold; a number outside is a slip more often than a label. */
const STRONGEST_LIQUID_GRAMS_PER_LITRE = 200;
const POWDER_PCT = { least: 20, most: 80 };
const TABLET_GRAMS = { least: 0.1, most: 10 };
const ROUNDING_ERROR = 1e-9;

/** The strength of a label as long as such labels are known, or a person has confirmed it: before fading, before anything is measured out. */
export const checkedStrength = calculation<Inputs, Strength>({
	key: "checked_strength",
	label: say`Available chlorine in the product`,
	unit: say`g/L, g/g or g/tablet`,
	formula: say`As on the label. Liquids over ${STRONGEST_LIQUID_GRAMS_PER_LITRE} g/L, powders under ${POWDER_PCT.least} or over ${POWDER_PCT.most} %, tablets under ${TABLET_GRAMS.least} or over ${TABLET_GRAMS.most} g give no figure until the label is confirmed.`,
	source: commonPractice,
	inputs: {
		available: {
			label: say`Available chlorine by the number typed`,
			unit: say`g/L, g/g or g/tablet`,
		},
		form: { label: say`Form`, unit: "" },
		strength: { label: say`Strength on the label`, unit: say`in its measure`, min: 0 },
		measure: { label: say`Strength is in`, unit: "" },
		confirmed: { label: say`Label confirmed`, unit: "" },
	},
	example: {
		inputs: {
			available: { form: "powder", gramsPerGram: 0.7 },
			form: "powder",
			strength: 70,
			measure: "pct_w_w",
			confirmed: "no",
		},
		result: { form: "powder", gramsPerGram: 0.7 },
		within: 0,
	},
	compute: ({ available, confirmed, ...label }) => {
		const usual = usualStrength(available);
		if (usual === undefined || confirmed === "yes") return available;
		return unusual(label, usual);
	},
});

/** What such products hold, in words; undefined where this one holds it too. */
function usualStrength(available: Strength): string | undefined {
	if (available.form === "liquid")
		return available.gramsPerLitre > STRONGEST_LIQUID_GRAMS_PER_LITRE + ROUNDING_ERROR
			? say`a liquid of at most ${STRONGEST_LIQUID_GRAMS_PER_LITRE} g/L, which is ${STRONGEST_LIQUID_GRAMS_PER_LITRE / 10} %`
			: undefined;
	if (available.form === "powder")
		return isOutside(available.gramsPerGram * 100, POWDER_PCT)
			? say`a powder of ${POWDER_PCT.least} to ${POWDER_PCT.most} %`
			: undefined;
	return isOutside(available.gramsPerTablet, TABLET_GRAMS)
		? say`tablets of ${TABLET_GRAMS.least} to ${TABLET_GRAMS.most} g of chlorine`
		: undefined;
}

function isOutside(value: number, { least, most }: { least: number; most: number }): boolean {
	return value < least - ROUNDING_ERROR || value > most + ROUNDING_ERROR;
}

function unusual(label: Omit<Inputs, "available" | "confirmed">, usual: string): Refusal {
	const { strength, measure } = label;
	return refuse({
		code: "unusual-strength",
		received: `${strength} ${measure}`,
		allowed: usual,
		message: [
			say`${strength} ${measure} is not a strength such products are sold in; usual is ${usual}.`,
			likelySlip({ ...label, density: null }),
			say`Look at the label again; if it does say so, put yes under “Label confirmed”. Until then nothing is measured out from it.`,
		]
			.filter(Boolean)
			.join(" "),
	});
}
