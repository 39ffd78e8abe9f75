import { codeOf } from "../../core/values/choice.ts";
import { shownWord } from "./choiceWords.ts";

/** A choice for reading, by its code or a word of another language: "in_service" becomes "in service". Other text stays as typed. */
export function shownChoice(text: string, options: readonly string[] | undefined): string {
	const code = options && codeOf(text, options);
	return code === undefined ? text : shownWord(code);
}

/** The word of a closed list that was typed as it is read: "in service" becomes "in_service". Other text stays as typed. */
export function choiceTyped(text: string, options: readonly string[]): string {
	return codeOf(text, options) ?? text;
}
