import { isUnreviewed } from "../../core/language.ts";
import { say } from "../../core/say.ts";

/** Stands on every page and every print of a language that nobody has reviewed; elsewhere empty. */
export const notReviewed = isUnreviewed
	? say.safety`Not reviewed: nobody who speaks this language and knows the trade has read this translation. Where it seems wrong, the English counts.`
	: "";
