import * as z from "zod/mini";
import { say } from "../say.ts";

/**
 * How one kind of cell is read, checked, written and described.
 *
 * `schema` turns the text of a cell into a value. `allowed` says in words what
 * the schema accepts, and `tableSchema` says the same to other programs
 * (Table Schema, Frictionless Data).
 */
export interface ValueKind<T> {
	readonly schema: z.ZodMiniType<T, string>;
	readonly allowed: string;
	readonly tableSchema: { readonly type: string; readonly [more: string]: unknown };
	/** True for a kind whose cells are set flush right. */
	readonly numeric: boolean;
	/** How other programs write such a value, where that needs more than one cell to tell. */
	readonly written?: Written;
	/** The options of a closed list, for a picker; absent elsewhere. */
	readonly options?: readonly string[];
	/** The text of a value in a file: decimal point, ISO dates. */
	write(value: T): string;
}

/** Kinds of value that spreadsheets write by the custom of a country. */
export type Written = "number" | "money" | "percent" | "share" | "date" | "dateTime";

/** A schema from a reading function that gives undefined for text it refuses. */
export function textSchema<T>(
	allowed: string,
	read: (text: string) => T | undefined,
): z.ZodMiniType<T, string> {
	const reading = z.transform((text: string, { issues }) => {
		const value = read(text);
		if (value !== undefined) return value;
		issues.push({ code: "custom", message: allowed, input: text });
		return z.NEVER;
	});
	return z.pipe(z.string(), reading);
}

/** The same kind, where a blank cell means "not given". */
export function optional<T>(kind: ValueKind<T>): ValueKind<T | null> {
	const allowed = say`${kind.allowed}, or blank`;
	return {
		...kind,
		allowed,
		schema: textSchema<T | null>(allowed, (text) => {
			if (text.trim() === "") return null;
			const read = kind.schema.safeParse(text);
			return read.success ? read.data : undefined;
		}),
		write: (value) => (value === null ? "" : kind.write(value)),
	};
}
