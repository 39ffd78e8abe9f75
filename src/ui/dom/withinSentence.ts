import type { Child } from "./el.ts";

/** Stands for the part while the sentence is put into words; no text holds it. */
const PLACE = "\u0000";

/** A sentence with a link or another part in it, wherever the language puts that part. */
export function withinSentence(sentence: (part: string) => string, part: HTMLElement): Child[] {
	const [before, after] = sentence(PLACE).split(PLACE);
	return [before, part, after];
}
