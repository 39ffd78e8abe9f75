import type { Sheet } from "../core/sheet.ts";
import { settings } from "../core/sheets/settings.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import { unitSheet } from "../core/sheets/unit.ts";
import type { ValueKind } from "../core/values/valueKind.ts";
import type { TextTable } from "../core/workbook.ts";

/**
 * The table as other programs can read it: numbers with a decimal point, times as HH:MM.
 *
 * Only text that was understood is rewritten, and only in its form: the value
 * stays the same to the last digit. All other text, right or wrong, is left alone.
 *
 * @example "6,5" under births becomes "6.5"; "about 6,5" stays
 */
export function standardTable(file: string, table: TextTable): TextTable {
	const sheet = typedSheets.find((one) => one.file === file);
	if (!sheet) return table;
	const rows = table.rows.map((cells) =>
		cells.map((text, at) => standard(text, kindOf(sheet, table.header, cells, at))),
	);
	return { ...table, rows };
}

/** What kind of value a cell holds; a value of unit.csv is of its setting's kind. */
function kindOf(sheet: Sheet, header: readonly string[], cells: readonly string[], at: number) {
	const key = header[at] ?? "";
	if (sheet.file !== unitSheet.file) return own(sheet.columns, key);
	return key === "value" ? own(settings, cells[header.indexOf("key")]?.trim() ?? "") : undefined;
}

function own(columns: Readonly<Record<string, { value: unknown }>>, key: string) {
	return Object.hasOwn(columns, key) ? (columns[key]?.value as ValueKind<unknown>) : undefined;
}

function standard(text: string, kind: ValueKind<unknown> | undefined): string {
	if (!kind?.schema.safeParse(text).success) return text;
	if (kind.numeric && text.includes(",")) return text.replace(/\s/g, "").replace(",", ".");
	if (kind.tableSchema.type === "time") return text.trim().padStart("07:00".length, "0");
	return text;
}
