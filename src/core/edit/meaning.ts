import type { Column } from "../column.ts";

/** What a text means in a column, as when it is read; undefined where the column does not take it. @example of a status "En service" → "in_service" */
export function meaning<T>({ value }: Column<T>, text: string): T | undefined {
	const read = value.schema.safeParse(text);
	return read.success ? read.data : undefined;
}
