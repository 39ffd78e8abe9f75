import type { Column } from "../../core/column.ts";
import { decimalSign } from "../../core/language.ts";
import { shownWord } from "./choiceWords.ts";

/** What a blank cell of a column means, for reading; "" where it means nothing. */
export function shownDefault({ fallback, value }: Column<unknown>): string {
	if (fallback === undefined) return "";
	const text = value.write(fallback);
	if (value.numeric) return text.replace(".", decimalSign);
	return value.options ? shownWord(text) : text;
}
