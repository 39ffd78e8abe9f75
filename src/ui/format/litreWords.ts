import { ML_PER_LITRE } from "../../core/chlorine/measureOut.ts";
import { amountOf } from "./amountOf.ts";
import { shownNumber, shownPlain } from "./shownNumber.ts";

/** Decimals of a quantity that is shown as it is measured out. */
export const EXACT = 3;

/** Litres as they are measured: "4.68 L", below a litre "850 mL". */
export function litreWords(litres: number): string {
	if (litres < 1) return `${shownNumber(litres * ML_PER_LITRE, 0)}\u00a0mL`;
	return `${shownPlain(Number(litres.toFixed(2)))}\u00a0L`;
}

/** Product as it is measured: "820 mL", "40 g", "1 tablet", "19 tablets". */
export function quantityWords(quantity: number, measure: string): string {
	return amountOf(quantity, measure, EXACT).replace(" ", "\u00a0");
}
