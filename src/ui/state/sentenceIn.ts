import type { Figure } from "../../core/calculation.ts";
import { daysInWords } from "../format/daysInWords.ts";
import { wordIn } from "./numberIn.ts";

/** The sentence in a cell, with its days in words; "" where it has none. */
export function sentenceIn(cell: Figure<string | null> | undefined): string {
	return daysInWords(wordIn(cell));
}
