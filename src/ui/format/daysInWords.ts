import { shownDay } from "./shownDay.ts";

const DAY = /\b\d{4}-\d\d-\d\d\b/g;

/**
 * A sentence of the core, which tells days as files have them, with its days in words.
 * @example "It was due on 2027-03-03." → "It was due on Wed 3 Mar."
 */
export function daysInWords(text: string): string {
	return text.replace(DAY, shownDay);
}
