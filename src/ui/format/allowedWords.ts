import type { Column } from "../../core/column.ts";
import { say } from "../../core/say.ts";
import { shownWord } from "./choiceWords.ts";

/** What a file may hold in a column; words of a closed list with their meaning, where that differs. */
export function allowedWords({ value }: Column<unknown>): string {
	if (!value.options) return value.allowed;
	const each = value.options.map((code) => {
		const word = shownWord(code);
		return word === code.replaceAll("_", " ") ? code : `${code} (${word})`;
	});
	return say`one of: ${each.join(", ")}`;
}
