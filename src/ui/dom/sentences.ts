import type { Child } from "./el.ts";

/** Sentences one after the other, each a text of its own, so that one with its English beside it keeps it. */
export function sentences(texts: readonly string[]): Child[] {
	return texts.flatMap((text, at) => (at === 0 ? [text] : [" ", text]));
}
