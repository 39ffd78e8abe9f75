import { shownPlain } from "./shownNumber.ts";

/** Measures that the list of items proposes and that have a plural of their own. */
const plurals: Readonly<Record<string, string>> = {
	piece: "pieces",
	pair: "pairs",
	tablet: "tablets",
};

/** "200 pieces", "1 pair", "2.5 L": a quantity with its measure, with no more decimals than asked for. */
export function amountOf(quantity: number, measure: string, decimals = 1): string {
	const rounded = Number(quantity.toFixed(decimals));
	return `${shownPlain(rounded)} ${rounded === 1 ? measure : (plurals[measure] ?? measure)}`.trim();
}
