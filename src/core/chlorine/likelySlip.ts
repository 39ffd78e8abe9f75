import { say } from "../say.ts";
import { type Label, MILLIGRAMS_PER_GRAM } from "./availableChlorine.ts";

/**
 * What was probably meant by a number that no such label has; "" where nothing comes to mind.
 *
 * @example likelySlip({ form: "powder", strength: 0.7, measure: "pct_w_w", density: null })
 * // "A share in place of a percentage? 0.7 would be 70 %."
 */
export function likelySlip({ form, strength, measure }: Label): string {
	if (form === "tablet") return tabletSlip(strength);
	if (form === "powder")
		return strength <= 1
			? say`A share in place of a percentage? ${strength} would be ${rounded(strength * 100)} %.`
			: "";
	if (measure === "g_per_l") return milligramSlip(strength);
	if (measure === "mg_per_l") return "";
	return measure === "chlorometric_degree"
		? say`Grams per litre typed as degrees? ${strength} g/L would be ${rounded(strength / 10)} %.`
		: say`Grams per litre or chlorometric degrees typed as %? ${strength} g/L would be ${rounded(strength / 10)} %; for ${strength} degrees choose “chlorometric degree”.`;
}

function tabletSlip(strength: number): string {
	return strength > 1
		? say`Milligrams typed as grams? ${strength} mg would be ${rounded(strength / MILLIGRAMS_PER_GRAM)} g; and take the chlorine in a tablet, not its weight.`
		: say`Tablets so small are for drinking water; or is the decimal point in the wrong place?`;
}

function milligramSlip(strength: number): string {
	return say`Milligrams typed as grams? ${strength} mg/L would be ${rounded(strength / MILLIGRAMS_PER_GRAM)} g/L.`;
}

function rounded(value: number): number {
	return Number(value.toPrecision(4));
}
