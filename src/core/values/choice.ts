import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";
import words from "./wordsOfChoices.json" with { type: "json" };

const wordsOf: Readonly<Record<string, readonly string[]>> = words;

/**
 * The code of a closed list that a text means: the code itself or a word that pages show
 * for it, in any of their languages. Capitals and surrounding spaces do not matter.
 *
 * @example codeOf("En service ", ["in_service", "out_of_service"]) // "in_service"
 */
export function codeOf<const T extends string>(text: string, options: readonly T[]): T | undefined {
	const wanted = plain(text);
	return (
		options.find((option) => option === wanted) ??
		options.find(
			(option) =>
				Object.hasOwn(wordsOf, option) && wordsOf[option]?.some((word) => plain(word) === wanted),
		)
	);
}

/** A choice of a closed list, by its code or a word for it; files keep the code. */
export function choice<const T extends string>(options: readonly T[]): ValueKind<T> {
	const allowed = say`one of: ${options.join(", ")}`;
	return {
		allowed,
		numeric: false,
		options,
		tableSchema: { type: "string", constraints: { enum: options } },
		schema: textSchema(allowed, (text) => codeOf(text, options)),
		write: (value) => value,
	};
}

/** Yes or no, written as those words. */
export function yesNo(): ValueKind<"yes" | "no"> {
	return choice(["yes", "no"]);
}

function plain(text: string): string {
	return text
		.trim()
		.toLowerCase()
		.normalize("NFC")
		.replace(/[\s’]/g, (sign) => (sign === "’" ? "'" : " "));
}
