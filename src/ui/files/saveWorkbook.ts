import type { Plan } from "../../core/plan.ts";
import type { Workbook } from "../../core/workbook.ts";
import { writeCsv } from "../../io/csv.ts";
import { computedCsv } from "../../io/writeComputed.ts";
import { zipWorkbook } from "../../io/zip.ts";
import { saveFile } from "./saveFile.ts";

/** Saves the whole workbook, typed and computed sheets, as one zip. */
export function saveWorkbook(workbook: Workbook, plan: Plan, name: string): void {
	saveFile(`${name}.zip`, zipWorkbook(workbook, plan), "application/zip");
}

/** Saves one sheet as CSV. */
export function saveSheet(workbook: Workbook, plan: Plan, file: string): void {
	const computed = plan.tables[file];
	const table = workbook.tables[file];
	if (computed) saveFile(file, computedCsv(computed), "text/csv");
	else if (table) saveFile(file, writeCsv(table), "text/csv");
}
