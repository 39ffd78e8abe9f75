import { THIS_WEEK } from "./pageTitles.ts";
import { questions } from "./questions.ts";

/** The sheet that the address names, for example "#births.csv"; the plan where it names none. */
export function routedSheet(hash: string): string {
	const wanted = hash.replace(/^#/, "");
	const known = questions.some(({ sheets }) => sheets.includes(wanted));
	return known ? wanted : THIS_WEEK;
}

export function hashOf(sheet: string): string {
	return `#${sheet}`;
}
