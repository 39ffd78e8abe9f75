import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** Longest name of a thing, in characters. */
export const LONGEST_NAME = 120;

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
