import { language } from "../../core/language.ts";

/** Whether a number of things goes with the singular: in English only 1, in French everything under 2. */
export function isOne(count: number): boolean {
	return language === "fr" ? Math.abs(count) < 2 : count === 1;
}
