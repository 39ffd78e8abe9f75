import { type Column, computed } from "../column.ts";
import { note } from "../values/note.ts";

type Said = Omit<Column<string>, "role" | "unit" | "value"> & Partial<Pick<Column<string>, "unit">>;

/** A column of text that the plan fills in, hardly ever with a unit. */
export function textColumn(column: Said): Column<string> {
	return computed({ unit: "", ...column, value: note() });
}
