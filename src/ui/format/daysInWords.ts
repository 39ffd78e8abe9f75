import { shownDay } from "./shownDay.ts";

const DAY = /\b(\d{4}-\d\d-\d\d)\b(\.?)/g;

/**
 * A sentence of the core, which tells days as files have them, with its days in words. A day
 * that ends with a point, such as "ven. 2 avr.", ends the sentence with it.
 * @example "It was due on 2027-03-03." → "It was due on Wed 3 Mar."
 */
export function daysInWords(text: string): string {
	return text.replace(DAY, (_, day: string, end: string) => {
		const words = shownDay(day);
		return words.endsWith(".") ? words : words + end;
	});
}
