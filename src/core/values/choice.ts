import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** One word of a closed list. Capitals and surrounding spaces do not matter. */
export function choice<const T extends string>(options: readonly T[]): ValueKind<T> {
	const allowed = say`one of: ${options.join(", ")}`;
	return {
		allowed,
		numeric: false,
		options,
		tableSchema: { type: "string", constraints: { enum: options } },
		schema: textSchema(allowed, (text) => {
			const wanted = text.trim().toLowerCase();
			return options.find((option) => option === wanted);
		}),
		write: (value) => value,
	};
}

/** Yes or no, written as those words. */
export function yesNo(): ValueKind<"yes" | "no"> {
	return choice(["yes", "no"]);
}
