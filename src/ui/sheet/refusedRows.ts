import { readTable } from "../../core/read/readTable.ts";
import { say } from "../../core/say.ts";
import { isTyped, sheetOf } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { State } from "../state/store.ts";

/** What stands over a sheet that people fill in where none of its rows could be read: it is not empty. */
export function refusedRows(state: State, file: string): string | undefined {
	const sheet = sheetOf(file);
	const table = state.workbook.tables[file];
	if (!sheet || !table || !isTyped(file) || file === unitSheet.file) return undefined;
	const { rows, badRows } = readTable(sheet, table);
	if (rows.length > 0 || badRows.length === 0) return undefined;
	return badRows.length === 1
		? say`1 row could not be read`
		: say`${badRows.length} rows could not be read`;
}
