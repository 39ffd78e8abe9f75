import { ML_PER_LITRE } from "../../core/chlorine/measureOut.ts";
import { shownNumber, shownPlain } from "../shown/shownNumber.ts";

/** Litres as they are measured: "4.68 L", below a litre "850 mL". */
export function litreWords(litres: number): string {
	if (litres < 1) return `${shownNumber(litres * ML_PER_LITRE, 0)}\u00a0mL`;
	return `${shownPlain(Number(litres.toFixed(2)))}\u00a0L`;
}

/** Product as it is measured: "820 mL", "40 g", "1 tablet", "19 tablets". */
export function quantityWords(quantity: number, measure: string): string {
	const plural = measure === "tablet" && quantity !== 1 ? "s" : "";
	return `${shownPlain(quantity)}\u00a0${measure}${plural}`;
}
