import { say } from "../say.ts";
import { codeOf } from "./choice.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** Several of a closed list, by their codes or words for them, with a comma or space between; blank is none. */
export function choices<const T extends string>(options: readonly T[]): ValueKind<readonly T[]> {
	const allowed = say`any of: ${options.join(", ")}, with a space between, or blank`;
	return {
		allowed,
		numeric: false,
		tableSchema: { type: "string" },
		schema: textSchema(allowed, (text) => {
			const codes = text
				.split(/[,;]/)
				.filter((part) => part.trim() !== "")
				.flatMap((part) => codesIn(part, options));
			return codes.every((code) => code !== undefined) ? [...new Set(codes)] : undefined;
		}),
		write: (values) => values.join(" "),
	};
}

/** A word for a code may have spaces in it, so the whole is tried first. */
function codesIn<const T extends string>(part: string, options: readonly T[]): (T | undefined)[] {
	const whole = codeOf(part, options);
	if (whole !== undefined) return [whole];
	return part
		.trim()
		.split(/\s+/)
		.map((word) => codeOf(word, options));
}
