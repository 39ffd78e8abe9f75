import type { Language } from "../../messages/languages.ts";
import type { StickWords } from "./stickWords.ts";
import { englishWords } from "./words/englishWords.ts";
import { frenchWords } from "./words/frenchWords.ts";
import { portugueseWords } from "./words/portugueseWords.ts";

/** The stick's own texts, one file a language. They are not part of the site, so its catalogues do not hold them. */
export const wordsOnStick: Readonly<Record<Language, StickWords>> = {
	en: englishWords,
	fr: frenchWords,
	pt: portugueseWords,
};
