import { say } from "../../core/say.ts";
import { shownWord } from "./choiceWords.ts";
import { counted } from "./counted.ts";
import { shownPlain } from "./shownNumber.ts";

/** Measures that the list of items proposes and that have a plural of their own. */
const measures = ["piece", "pair", "tablet"] as const;

/** "200 pieces", "1 pair", "2.5 L": a quantity with its measure, with no more decimals than asked for. */
export function amountOf(quantity: number, measure: string, decimals = 1): string {
	const rounded = Number(quantity.toFixed(decimals));
	const known = measures.find((each) => each === measure || shownWord(each) === measure);
	return known ? counted(rounded, known) : say`${shownPlain(rounded)} ${measure}`.trim();
}
