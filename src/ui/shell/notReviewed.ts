import { isUnreviewed } from "../../core/language.ts";
import { say } from "../../core/say.ts";

/** Stands on every page and every print of a language that nobody has reviewed; elsewhere empty. */
export const notReviewed = isUnreviewed
	? say.safety`Not reviewed: no qualified speaker has read this translation. In doubt, the English counts.`
	: "";
