import type { Figure } from "../calculation.ts";
import { GRAMS_PER_LITRE_PER_PCT, type Strength } from "./availableChlorine.ts";

/** Whether a product cannot make the strength wanted, however little it is diluted; tablets always can. */
export function isTooWeak({ outcome }: Figure<Strength>, targetPct: number): boolean {
	if (!outcome.ok || outcome.value.form === "tablet") return false;
	const { value } = outcome;
	const pct =
		value.form === "liquid"
			? value.gramsPerLitre / GRAMS_PER_LITRE_PER_PCT
			: value.gramsPerGram * 100;
	return pct < targetPct;
}
