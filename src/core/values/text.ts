import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** Longest name of a thing, in characters. */
export const LONGEST_NAME = 120;
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

/** A name that other rows can refer to: not blank, spaces around it do not count. */
export function name(): ValueKind<string> {
	const allowed = say`a name of 1 to ${LONGEST_NAME} characters`;
	return {
		allowed,
		numeric: false,
		tableSchema: { type: "string", constraints: { required: true, maxLength: LONGEST_NAME } },
		schema: textSchema(allowed, (text) => {
			const trimmed = text.trim();
			return trimmed === "" || trimmed.length > LONGEST_NAME ? undefined : trimmed;
		}),
		write: (value) => value,
	};
}
