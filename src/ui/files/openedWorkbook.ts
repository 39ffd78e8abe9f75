import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { Workbook } from "../../core/workbook.ts";
import { migrated } from "../../io/migrated.ts";
import { titleOf } from "../shell/titleOf.ts";

interface OpenedWorkbook {
	readonly workbook: Workbook;
	/** Another workbook than the one before, and not an edit of it. */
	readonly isAnother: boolean;
	readonly told: string;
}

/**
 * What opening these files makes of the workbook on the screen.
 *
 * Files with the unit's settings are a workbook of their own. Single sheets
 * replace the sheets of the same name and leave the others alone.
 */
export function openedWorkbook(before: Workbook, read: Workbook): OpenedWorkbook {
	const files = Object.keys(read.tables);
	if (files.length === 0)
		return {
			workbook: before,
			isAnother: false,
			told: say`Nothing was opened: no sheet of a workbook was found.`,
		};
	const now = migrated(read);
	if (unitSheet.file in now.tables)
		return {
			workbook: now,
			isAnother: true,
			told: say`A workbook of ${files.length} sheets was opened.`,
		};
	return {
		workbook: { ...before, ...now, tables: { ...before.tables, ...now.tables } },
		isAnother: false,
		told: say`Replaced: ${files.map(titleOf).join(", ")}. The other sheets stand as they were.`,
	};
}
