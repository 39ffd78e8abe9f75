import type { Descent } from "../core/merge/descent.ts";
import type { Plan } from "../core/plan/plan.ts";
import type { Workbook } from "../core/workbook.ts";
import { computedCsv, problemsCsv } from "./computedCsv.ts";
import { dataPackage } from "./dataPackage.ts";
import { computedTables, typedTables } from "./describedTable.ts";
import { DESCRIPTION_FILE } from "./descriptionFile.ts";
import { HISTORY_FILE } from "./history/historyFile.ts";
import { historyText } from "./history/historyText.ts";
import { standardTable } from "./standardTable.ts";
import { writeCsv } from "./writeCsv.ts";

const PLAN_FOLDER = "plan/";

/**
 * The files of a workbook, by their paths: its sheets, its description, in the folder `plan`
 * the results, where a plan is given, and what it remembers of its saves, where that is given.
 */
export function workbookFiles(
	workbook: Workbook,
	plan?: Plan,
	descent?: Descent,
): Record<string, string> {
	const described = [...typedTables(workbook), ...(plan ? computedTables(plan, PLAN_FOLDER) : [])];
	const texts: Record<string, string> = {
		[DESCRIPTION_FILE]: dataPackage(described, workbook.format),
	};
	for (const [file, table] of Object.entries(workbook.tables))
		texts[file] = writeCsv(standardTable(file, table));
	if (descent) texts[HISTORY_FILE] = historyText(descent);
	for (const table of Object.values(plan?.tables ?? {}))
		texts[`${PLAN_FOLDER}${table.sheet.file}`] = computedCsv(table);
	if (plan) texts[`${PLAN_FOLDER}problems.csv`] = problemsCsv(plan.problems);
	return texts;
}
