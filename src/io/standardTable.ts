import { blockCells } from "../core/read/block/blockCells.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import type { ValueKind } from "../core/values/valueKind.ts";
import type { TextTable } from "../core/workbook.ts";

/**
 * The table as other programs can read it: numbers with a decimal point, times as HH:MM,
 * the codes of choices.
 *
 * Only text that was understood is rewritten, and only in its form: the value
 * stays the same to the last digit. All other text, right or wrong, is left alone.
 *
 * @example "6,5" under births becomes "6.5"; "about 6,5" stays
 */
export function standardTable(file: string, table: TextTable): TextTable {
	const sheet = typedSheets.find((one) => one.file === file);
	if (!sheet) return table;
	const rows = [...table.rows];
	for (const { row, at, text, column } of blockCells({ sheet, table })) {
		const written = standard(text, column.value);
		if (written !== text) rows[row] = (rows[row] ?? []).with(at, written);
	}
	return { ...table, rows };
}

/** Written by their value: only one text stands for it. */
const BY_VALUE = new Set(["time", "datetime"]);
/** A point with three digits behind it is read as one between thousands in half of the world. */
const THOUSANDS_TO_SOME = /^[+-]?[1-9]\d{0,2}\.\d{3}$/;

function standard(text: string, kind: ValueKind<unknown>): string {
	const read = kind.schema.safeParse(text);
	if (!read.success) return text;
	if (kind.options || BY_VALUE.has(kind.tableSchema.type)) return kind.write(read.data);
	if (!kind.numeric) return text;
	const plain = text.includes(",") ? text.replace(/\s/g, "").replace(",", ".") : text;
	return THOUSANDS_TO_SOME.test(plain.trim()) ? `${plain.trim()}0` : plain;
}
