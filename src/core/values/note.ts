import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** Longest note, in characters. */
export const LONGEST_NOTE = 2000;

/** Free text, which may be blank. */
export function note(): ValueKind<string> {
	const allowed = say`text of at most ${LONGEST_NOTE} characters`;
	return {
		allowed,
		numeric: false,
		tableSchema: { type: "string", constraints: { maxLength: LONGEST_NOTE } },
		schema: textSchema(allowed, (text) => (text.length > LONGEST_NOTE ? undefined : text)),
		write: (value) => value,
	};
}
