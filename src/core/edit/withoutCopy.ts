import { textsOf } from "../read/textsOf.ts";
import { keptSettingsSheet } from "../sheets/keptSettings.ts";
import { type Workbook, withTable } from "../workbook.ts";

/** The workbook without the copy of this name; the other copies stand as they were. */
export function withoutCopy(workbook: Workbook, name: string): Workbook {
	const kept = textsOf(workbook, keptSettingsSheet);
	const rows = kept.rows.filter((row) => kept.cell(row, "name").trim() !== name);
	return withTable(workbook, keptSettingsSheet.file, { header: kept.header, rows });
}
