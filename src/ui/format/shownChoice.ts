import { shownWord } from "./choiceWords.ts";

/** One word of a closed list for reading: "in_service" becomes "in service". Other text stays as typed. */
export function shownChoice(text: string, options: readonly string[] | undefined): string {
	return options?.includes(text) ? shownWord(text) : text;
}

/** The word of a closed list that was typed as it is read: "in service" becomes "in_service". Other text stays as typed. */
export function choiceTyped(text: string, options: readonly string[]): string {
	const typed = text.trim().toLowerCase();
	return options.find((option) => shownWord(option).toLowerCase() === typed) ?? text;
}
