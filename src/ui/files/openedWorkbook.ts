import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { Workbook } from "../../core/workbook.ts";
import { titleOf } from "../book/sheetOf.ts";

/**
 * What opening these files makes of the workbook on the screen.
 *
 * Files with the unit's settings are a workbook of their own. Single sheets
 * replace the sheets of the same name and leave the others alone.
 */
export function openedWorkbook(
	before: Workbook,
	read: Workbook,
): { readonly workbook: Workbook; readonly told: string } {
	const files = Object.keys(read.tables);
	if (files.length === 0)
		return { workbook: before, told: say`Nothing was opened: no sheet of a workbook was found.` };
	if (unitSheet.file in read.tables)
		return { workbook: read, told: say`A workbook of ${files.length} sheets was opened.` };
	return {
		workbook: { tables: { ...before.tables, ...read.tables } },
		told: say`Replaced: ${files.map(titleOf).join(", ")}. The other sheets stand as they were.`,
	};
}
