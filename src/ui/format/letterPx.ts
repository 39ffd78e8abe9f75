import { shownPlain } from "./shownNumber.ts";

/** A bold letter of a picture's label is about so wide, in px: what is measured by it fits in most fonts. */
export const LETTER_PX = 8;

/** From an axis to its numbers. */
const TICK_PX = 12;

/** Room left of an axis for numbers as long as this one, in px. */
export function axisPx(most: number): number {
	return TICK_PX + LETTER_PX * shownPlain(Math.ceil(most)).length;
}
