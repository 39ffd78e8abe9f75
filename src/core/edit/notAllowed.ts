import type { Column } from "../column.ts";
import { say } from "../say.ts";

/** What is wrong with a text that a person enters. */
export function notAllowed(label: string, text: string, allowed: string): string {
	return text.trim() === ""
		? say`${label} is blank; allowed is ${allowed}.`
		: say`${label}: “${text}” was found; allowed is ${allowed}.`;
}

/** What is wrong with a text for a cell; undefined where nothing is. */
export function wrongFor(
	{ label, value }: Pick<Column<unknown>, "label" | "value">,
	text: string,
): string | undefined {
	if (value.schema.safeParse(text).success) return undefined;
	return notAllowed(label, text, value.allowed);
}
