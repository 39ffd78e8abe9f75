import type { Plan } from "../core/plan/plan.ts";
import type { Workbook } from "../core/workbook.ts";
import { computedCsv, problemsCsv } from "./computedCsv.ts";
import { dataPackage } from "./dataPackage.ts";
import { computedTables, typedTables } from "./describedTable.ts";
import { standardTable } from "./standardTable.ts";
import { writeCsv } from "./writeCsv.ts";
import { zipFiles } from "./zipFiles.ts";

const PLAN_FOLDER = "plan/";

/**
 * The workbook as one zip file: its sheets, its description, and in the folder
 * `plan` the results, where a plan is given. The same input gives the same bytes.
 * Text comes back from readFiles as it was, but for numbers typed with a decimal
 * comma, which are written with a point, and times such as 7:00, written 07:00.
 */
export function zipWorkbook(workbook: Workbook, plan?: Plan): Uint8Array {
	const described = [...typedTables(workbook), ...(plan ? computedTables(plan, PLAN_FOLDER) : [])];
	const texts: Record<string, string> = {
		"datapackage.json": dataPackage(described, workbook.format),
	};
	for (const [file, table] of Object.entries(workbook.tables))
		texts[file] = writeCsv(standardTable(file, table));
	for (const table of Object.values(plan?.tables ?? {}))
		texts[`${PLAN_FOLDER}${table.sheet.file}`] = computedCsv(table);
	if (plan) texts[`${PLAN_FOLDER}problems.csv`] = problemsCsv(plan.problems);
	const encoder = new TextEncoder();
	const files = Object.entries(texts).map(([name, text]) => [name, encoder.encode(text)]);
	return zipFiles(Object.fromEntries(files));
}
